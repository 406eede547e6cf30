/** What must be said to the customer before a vehicle is taken in. */
export type CheckInNotice = {
  readonly code: string;
  /** Said, then ticked; kept with the check-in word for word. */
  readonly sentence: string;
  /** Where it comes from. */
  readonly source: string;
};

/** What of the job decides which notices apply. */
export type NoticeTraits = {
  readonly onDyno: boolean;
  readonly onRoad: boolean;
  readonly certified: boolean;
  readonly calibrated: boolean;
};

const memory = "From memory; confirm with the consumer authority.";
const practice = "Common practice, no source.";

/** The notices of one job, in the order in which they are said. */
export function checkInNotices(traits: NoticeTraits): readonly CheckInNotice[] {
  return [
    {
      code: "user-data",
      sentence:
        "The vehicle stores data of its users (telephone pairing, addresses, settings). Repair may lose it; the customer has copied what they want to keep.",
      source: `Australian Consumer Law, repair notice for goods that store user data, given before the goods are taken. ${memory}`,
    },
    {
      code: "refurbished-parts",
      sentence:
        "Goods presented for repair may be replaced by refurbished goods of the same type rather than being repaired, and refurbished parts may be used.",
      source: `Australian Consumer Law, repair notice for refurbished parts. ${memory}`,
    },
    {
      code: "removed-parts",
      sentence:
        "Removed parts are kept for the customer until hand-over, except those that go back as a core; anything not taken then is disposed of.",
      source: practice,
    },
    ...(traits.calibrated ? [calibration] : []),
    ...(traits.onDyno ? [dyno] : []),
    ...(traits.onRoad ? [road] : []),
    ...(traits.certified ? [certificate] : []),
    {
      code: "insurer",
      sentence:
        "The customer tells their insurer of the modification; the maker's warranty may be affected by it.",
      source: practice,
    },
    {
      code: "valuables",
      sentence: "Valuables and loose items have been taken out of the vehicle.",
      source: practice,
    },
  ];
}

const calibration: CheckInNotice = {
  code: "calibration",
  sentence:
    "The controller is written with a new calibration; an update by a dealer overwrites it, and writing it again is charged.",
  source: practice,
};

const dyno: CheckInNotice = {
  code: "dyno-consent",
  sentence:
    "The vehicle will be run at full load on the dyno. The customer agrees, and has named every fault they know of.",
  source: practice,
};

const road: CheckInNotice = {
  code: "road-test",
  sentence: "The vehicle will be driven on the road by licensed staff to test it. The customer agrees.",
  source: practice,
};

const certificate: CheckInNotice = {
  code: "certificate",
  sentence:
    "The vehicle is not driven on a road after the work until the certificate is attached; until then it leaves by trailer or permit.",
  source: "Common practice, no source; confirm with the authority or a licensed signatory.",
};
