"use client";

import { Button } from "@/design/button";
import { momentText } from "@/design/moment-text";
import type { FloorSender } from "./use-floor-sender";

interface SavedLineProps {
  readonly sender: FloorSender;
  readonly timeZone: string;
  readonly readAt: string;
}

/** The line at the bottom that always says where the entries are. */
export function SavedLine({ sender, timeZone, readAt }: SavedLineProps) {
  const { waiting, ofOthers, savedAt, because, outlastsThePage } = sender;
  const refused = waiting.filter((entry) => entry.refused);
  const pending = waiting.length - refused.length;
  return (
    <footer className="saved-line" data-waits={waiting.length > 0 || undefined}>
      <p role="status">
        {pending > 0
          ? `${count(pending)} on this device, not yet at the workshop.`
          : savedAt
            ? `Saved at the workshop ${momentText(new Date(savedAt), timeZone, "time")}`
            : `All entries are at the workshop. Card read ${momentText(new Date(readAt), timeZone, "time")}`}
        {pending > 0 && because && ` ${because}`}
        {pending > 0 &&
          !outlastsThePage &&
          " This browser keeps nothing: leave this page open until they are sent."}
      </p>
      {pending > 0 && <Button onPress={() => void sender.sendAgain()}>Send now</Button>}
      {refused.map((entry) => (
        <div key={entry.key} className="saved-line-refused" role="alert">
          <p>
            <strong>Not taken: {entry.label}</strong> {entry.refused}
          </p>
          <div className="form-actions">
            <Button onPress={() => void sender.sendAgain()}>Send again</Button>
            <Button onPress={() => void sender.forget(entry.key)}>Drop this entry</Button>
          </div>
        </div>
      ))}
      {ofOthers > 0 && (
        <p>{count(ofOthers)} of somebody else on this device: they go when that person signs in here.</p>
      )}
    </footer>
  );
}

function count(entries: number): string {
  return entries === 1 ? "1 entry" : `${entries} entries`;
}
