/** Points per millimetre: 72 to the inch of 25.4 mm. */
export const MM = 72 / 25.4;

/** A4, ISO 216. */
export const page = { width: 210 * MM, height: 297 * MM } as const;

export const margin = { left: 22 * MM, right: 22 * MM, top: 20 * MM, bottom: 24 * MM } as const;

export const content = {
  left: margin.left,
  width: page.width - margin.left - margin.right,
  right: page.width - margin.right,
  bottom: page.height - margin.bottom,
} as const;

/** Paper and ink, one accent, one alarm colour kept for safety. */
export const ink = {
  black: "#14191a",
  soft: "#434b4c",
  faint: "#5d6667",
  rule: "#c3cac7",
  accent: "#0a5157",
  wash: "#dde9e8",
  alarm: "#9c1f16",
} as const;

export const size = { title: 17, heading: 11, body: 9.25, small: 7.75 } as const;

export const LINE_GAP = 2.2;
