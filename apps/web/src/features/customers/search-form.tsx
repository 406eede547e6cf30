import { Button } from "@/design/button";
import { TextField } from "@/design/text-field";

interface SearchFormProps {
  readonly label: string;
  readonly search: string;
  readonly placeholder: string;
}

/** Narrows a list by a word; the word stands in the address, so that the list can be kept and sent. */
export function SearchForm({ label, search, placeholder }: SearchFormProps) {
  return (
    <search className="no-print">
      <form className="flex max-w-xl items-end gap-2">
        <div className="grow">
          <TextField name="q" label={label} type="search" defaultValue={search} placeholder={placeholder} />
        </div>
        <Button type="submit">Search</Button>
      </form>
    </search>
  );
}
