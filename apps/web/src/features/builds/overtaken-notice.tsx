"use client";

import { Button } from "@/design/button";
import { Notice } from "@/design/notice";
import { useSheet } from "./use-sheet";

/** A step that somebody else's change overtook: still here, to be done on the newer sheet or let go. */
export function OvertakenNotice() {
  const { overtaken, repeatOvertaken, dropOvertaken } = useSheet();
  if (!overtaken) return null;
  return (
    <div role="alert">
      <Notice title={`Not saved: ${overtaken.step.words}`} kind="blocks">
        <p>
          Somebody else changed this build sheet while you had it open. The sheet below is theirs, the newest.
          Your step is kept until you decide.
        </p>
        <div className="form-actions">
          <Button variant="primary" onPress={repeatOvertaken}>
            Do it on the newer sheet
          </Button>
          <Button onPress={dropOvertaken}>Let it go</Button>
        </div>
      </Notice>
    </div>
  );
}
