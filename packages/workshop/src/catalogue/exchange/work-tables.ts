import { type ContentOf, picks } from "../part-content";
import { hours, oneOf, text, wholeNumber } from "./cell";
import { codes } from "./list-cell";
import { column, type Flat, type PartTable } from "./part-table";

type Group = ContentOf<"group">;
type Operation = ContentOf<"operation">;
type Access = ContentOf<"access">;

const asItIs = (flat: Flat) => flat;
const rate = oneOf(["workshop", "dyno"]);
const places = ["hoist", "dyno", "road", "floor", "desk", "bought-in"];
const skills = ["mechanical", "electrical", "dyno", "calibration", "desk"];
const stages = [
  "inspection",
  "teardown",
  "fitting",
  "first-start",
  "calibration",
  "proof",
  "road-test",
  "hand-over",
  "after",
];

export const groupTable: PartTable<"group"> = {
  part: "group",
  columns: [
    column("name", "name", text, ({ name }: Group) => name),
    column("pick", "pick", oneOf(picks), ({ pick }: Group) => pick),
    column("items", "items", codes, ({ items }: Group) => items),
    column("position", "position", wholeNumber, ({ position }: Group) => position, 0),
  ],
  content: asItIs,
};

export const operationTable: PartTable<"operation"> = {
  part: "operation",
  columns: [
    column("name", "name", text, ({ name }: Operation) => name),
    column("hours", "hours", hours, (operation: Operation) => operation.hours),
    column("rate", "rate", rate, (operation: Operation) => operation.rate),
    column("access", "access", codes, ({ access }: Operation) => access, []),
    column("place", "place", oneOf(places), ({ place }: Operation) => place),
    column("skill", "skill", oneOf(skills), ({ skill }: Operation) => skill),
    column("stage", "stage", oneOf(stages), ({ stage }: Operation) => stage),
    column("position", "position", wholeNumber, ({ position }: Operation) => position, 0),
  ],
  content: asItIs,
};

export const accessTable: PartTable<"access"> = {
  part: "access",
  columns: [
    column("name", "name", text, ({ name }: Access) => name),
    column("hours", "hours", hours, (access: Access) => access.hours),
    column("rate", "rate", rate, (access: Access) => access.rate),
    column("needs", "needs", codes, ({ needs }: Access) => needs, []),
  ],
  content: asItIs,
};
