import type { JobView } from "@buildproof/workshop";
import Link from "next/link";
import { Button } from "@/design/button";
import { TextField } from "@/design/text-field";
import "./jobs.css";

/** The lists of jobs, as people ask for them. */
export const viewWords: Readonly<Record<JobView, string>> = {
  current: "in hand",
  waiting: "waiting for time",
  booked: "booked",
  "in-work": "in the workshop",
  done: "done and still here",
  "handed-over": "handed over",
  stopped: "stopped",
  all: "all",
};

const order: readonly JobView[] = [
  "current",
  "waiting",
  "booked",
  "in-work",
  "done",
  "handed-over",
  "stopped",
  "all",
];

/** Which jobs, in words, and a search among them. Works without scripts. */
export function JobsFilter({ view, search }: { readonly view: JobView; readonly search: string }) {
  return (
    <div className="jobs-filter">
      <nav aria-label="Lists of jobs">
        <ul className="jobs-views">
          {order.map((each) => (
            <li key={each}>
              <Link
                href={`/jobs?${new URLSearchParams({ view: each, ...(search ? { search } : {}) })}`}
                aria-current={each === view ? "page" : undefined}
              >
                {viewWords[each]}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      <form action="/jobs" className="jobs-search">
        <input type="hidden" name="view" value={view} />
        <TextField name="search" label="Job, plate, customer or goal" type="search" defaultValue={search} />
        <Button type="submit">Find</Button>
      </form>
    </div>
  );
}
