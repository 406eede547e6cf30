import type { GoalAnswer, GoalMiss, GoalWay } from "@buildproof/workshop";
import { Money } from "@/design/money";
import { moneyText } from "@/design/money-text";
import { Section } from "@/design/sheet";
import { dateText, hoursText } from "./build-words";
import type { goalOfAddress } from "./goal-of-address";
import { StartFromWay } from "./start-from-way";

type Asked = ReturnType<typeof goalOfAddress>;

interface GoalWaysProps {
  readonly answer: GoalAnswer;
  readonly vehicleId: string;
  readonly asked: Asked;
}

/** The ways to a goal, best first: what each promises, costs and takes, and what it misses by how much. */
export function GoalWays({ answer, vehicleId, asked }: GoalWaysProps) {
  const { ways, currency } = answer;
  const goal = goalWords(asked, currency);
  return (
    <Section title="What meets it" aside={<span className="fine">{scopeWords(answer)}</span>}>
      {ways.length === 0 && (
        <p>Nothing in the catalogue can be completed for this goal on this vehicle. Ask for less of it.</p>
      )}
      <ol className="goal-ways" aria-label="Ways to the goal">
        {ways.map((way) => (
          <li key={way.items.join()} className="goal-way">
            <div>
              <h3 className="text-base">{way.name}</h3>
              <p>
                <strong>{verdictWords(way, currency)}</strong>
              </p>
              <p>{promiseWords(way)}</p>
              {way.added.length > 0 && <p className="fine">With what it needs: {way.added.join(", ")}.</p>}
            </div>
            <div>
              <p>
                <strong>
                  <Money minor={way.grossMinor} currency={currency} />
                </strong>
              </p>
              <p>
                {hoursText(way.labourHours)}
                {way.dynoHours > 0 && ` and ${hoursText(way.dynoHours)} on the dyno`}
              </p>
              <p>ready {dateText(way.readyOn)}</p>
            </div>
            <StartFromWay way={way} vehicleId={vehicleId} goal={goal} wantedBy={asked.by} />
          </li>
        ))}
      </ol>
      <p className="fine">
        The price holds for one of each item, tax included. The day is the earliest if parts are ordered today
        and the vehicle goes straight in; the plan decides. A forecast is not a promise until the dyno has
        measured it.
      </p>
    </Section>
  );
}

function scopeWords({ impossible, unexamined }: GoalAnswer): string {
  return [
    unexamined > 0
      ? `not exhaustive: the time did not suffice for ${unexamined} more`
      : "packages, their variations, parts that change power, and past builds",
    impossible > 0 ? `${impossible} cannot be completed on this vehicle` : "",
  ]
    .filter((part) => part !== "")
    .join(" · ");
}

function verdictWords({ misses, isSure }: GoalWay, currency: string): string {
  if (misses.length > 0) return `Misses: ${misses.map((miss) => missWords(miss, currency)).join("; ")}`;
  return isSure ? "Meets the goal" : "Meets the goal as expected; the low end of its band does not";
}

function missWords(miss: GoalMiss, currency: string): string {
  if (miss.kind === "power") return `${miss.byKw} kW short`;
  if (miss.kind === "date") return miss.byDays === 1 ? "1 day late" : `${miss.byDays} days late`;
  return `${moneyText(miss.byMinor, currency)} over`;
}

function promiseWords({ power }: GoalWay): string {
  if (!power) return "No forecast can be made of it.";
  const [low, expected, high] = [power.low, power.expected, power.high].map(Math.round);
  return `Forecast ${low}–${high} kW at the hubs, expected ${expected}`;
}

/** The goal as the build carries it. */
function goalWords({ powerKw, towKg, by, budgetMinor }: Asked, currency: string): string {
  return [
    powerKw === null ? "" : `at least ${powerKw} kW at the hubs`,
    towKg === null ? "" : `tow ${towKg} kg`,
    by === null ? "" : `ready by ${dateText(by)}`,
    budgetMinor === null ? "" : `at most ${moneyText(budgetMinor, currency)}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
}
