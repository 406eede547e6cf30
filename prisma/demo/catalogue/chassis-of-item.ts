/** What gearing, tyres and masses have to know of an item. */
export type ItemChassis = {
  readonly masses?: {
    readonly frontAxleShare?: number;
    /** The fact that says what the parts weigh that come off for it; without, nothing comes off. */
    readonly replacesFact?: string;
    /** An upgrade of what the axles and the vehicle may carry; the combination stays as the maker plates it. */
    readonly gvmAddKg?: number;
    readonly frontRatingAddKg?: number;
    readonly rearRatingAddKg?: number;
    /** Of a towing duty: the whole loaded trailer, and what of it rests on the ball. */
    readonly trailerKg?: number;
    readonly ballKg?: number;
  };
  readonly tyre?: {
    readonly designation?: string;
    /** The placard holds the driver to it. */
    readonly placardKmh?: number;
    /** What a recalibrated speedometer is set to show over the true speed. */
    readonly speedometerOverPct?: number;
  };
  readonly driveline?: { readonly finalDrive: number };
};

/** That it sits so far to the front, and nothing else. */
export const at = (frontAxleShare: number): ItemChassis => ({ masses: { frontAxleShare } });
