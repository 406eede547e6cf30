import { expect, test } from "vitest";
import { visitsOf } from "./visits";

const access = [
  { code: "undertray", needs: [] },
  { code: "front-end", needs: ["undertray"] },
  { code: "undertray-later", needs: [] },
];

test("the inspection comes before the job, the re-torque after it, each with the access work of its own", () => {
  const visits = visitsOf(
    [
      { code: "inspect", stage: "inspection", access: [] },
      { code: "blower", stage: "fitting", access: ["front-end"] },
      { code: "re-torque", stage: "after", access: ["undertray-later"] },
    ],
    access,
  );
  expect(Object.fromEntries(visits)).toEqual({
    inspect: "before",
    blower: "main",
    "front-end": "main",
    undertray: "main",
    "re-torque": "after",
    "undertray-later": "after",
  });
});

test("access work that the job and a later visit share is work of the job", () => {
  const visits = visitsOf(
    [
      { code: "re-torque", stage: "after", access: ["undertray"] },
      { code: "blower", stage: "fitting", access: ["front-end"] },
    ],
    access,
  );
  expect(visits.get("undertray")).toBe("main");
});
