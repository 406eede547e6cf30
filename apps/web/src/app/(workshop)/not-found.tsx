import { NothingHere } from "@/shell/nothing-here";

/** The shell has the page's main part already. */
export default function NotFoundInTheWorkshop() {
  return <NothingHere />;
}
