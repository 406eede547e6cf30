/** The road that times are told for: usual figure, least, most. The usual altitude is the site's own. */
export const roadAssumptions = {
  /** Rise over run; negative is downhill. */
  roadSlopePct: [0, -10, 25],
  /** Against the direction of travel; negative is from behind. */
  roadHeadwindKmh: [0, -60, 60],
  roadAltitudeM: [0, -400, 4_500],
} as const;

export type RoadAssumptionName = keyof typeof roadAssumptions;
export type RoadConditions = Readonly<Record<RoadAssumptionName, number>>;
