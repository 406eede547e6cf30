"use client";

import type { ChoiceObstacle, SheetChoice } from "@buildproof/workshop";
import { Button } from "@/design/button";
import { Disclosure } from "@/design/disclosure";
import { listedNames } from "./build-words";
import { useSheet } from "./use-sheet";

/** "Because … Would have to go: A and B." */
export function obstacleWords({ because, goes }: ChoiceObstacle): string {
  return goes.length === 0 ? because : `${because} Would have to go: ${listedNames(goes)}.`;
}

/** What cannot be chosen beside the others, why, and the press that makes room for it. */
export function RefusedChoices({ choices }: { readonly choices: readonly SheetChoice[] }) {
  const { change } = useSheet();
  const refused = choices.flatMap(({ code, name, obstacle }) => (obstacle ? [{ code, name, obstacle }] : []));
  if (refused.length === 0) return null;
  return (
    <Disclosure
      title={refused.length === 1 ? "1 cannot be chosen: why" : `${refused.length} cannot be chosen: why`}
    >
      <ul className="grid gap-3">
        {refused.map(({ code, name, obstacle }) => (
          <li key={code} className="grid justify-items-start gap-1">
            <p>
              <strong>{name}</strong>
              <span className="sentence-note">{obstacle.because}</span>
            </p>
            {obstacle.goes.length > 0 && (
              <Button
                onPress={() =>
                  change(`${name} in place of ${listedNames(obstacle.goes)}`, {
                    kind: "items",
                    set: [{ code, quantity: 1 }],
                    remove: obstacle.goes.map((each) => each.code),
                  })
                }
              >
                <span className="text-start">Choose it and leave out {listedNames(obstacle.goes)}</span>
              </Button>
            )}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
