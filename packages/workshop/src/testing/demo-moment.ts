/** Wednesday 25 November 2026, 09:00 in Adelaide (UTC+10:30): the "today" of every test of use cases. */
export const demoNow = new Date("2026-11-24T22:30:00Z");

/** The database that holds the demo and that test files clone. */
export const demoTemplate = "buildproof_demo";
