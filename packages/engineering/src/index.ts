export * from "./dyno/correction-question";
export * from "./dyno/reduced-run";
export * from "./dyno/run-row";
export * from "./dyno/session-figures";
