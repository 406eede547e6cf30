import type { ObligationRule } from "./obligation";

const confirm = "Confirm with the authority or a licensed signatory.";
const commonPractice = "Common practice, no source.";

/**
 * What a job has to show before its vehicle leaves. One jurisdiction in detail: South Australia.
 *
 * @source Each rule names its own. Nothing here was read in the instrument itself unless it says so, and
 *         every rule of law is therefore one to confirm.
 */
export const obligationRules: readonly ObligationRule[] = [
  {
    code: "engineering-certificate",
    title: "Certificate of a licensed signatory",
    when: ["certificate-promised"],
    basis: "contract",
    because:
      "The accepted quote includes certification. Until the certificate is attached the vehicle is done, not for road use.",
    source: `The accepted quote. ${confirm}`,
    evidenceKind: "certificate",
    signatory: "Licensed signatory (light-vehicle engineering)",
  },
  {
    code: "torque-record",
    title: "Fastener torque record complete",
    when: ["torque-steps"],
    basis: "safety",
    because: "A fastener whose torque nobody recorded may be a fastener nobody tightened.",
    source: `${commonPractice} The limits are the part makers' figures.`,
    evidenceKind: "record",
  },
  {
    code: "hold-points-signed",
    title: "Every hold point signed by a second person",
    when: ["hold-points"],
    basis: "safety",
    because: "A hold point is where one pair of eyes is not enough: fuel, first start, safe to leave.",
    source: commonPractice,
    evidenceKind: "record",
  },
  {
    code: "dyno-verdict",
    title: "Proof on the dyno, with its verdict released",
    when: ["power-promised"],
    basis: "contract",
    because: "The quote promises a figure at the hubs; the customer is told whether it was kept.",
    source: "The accepted quote.",
    evidenceKind: "record",
  },
  {
    code: "readiness-monitors",
    title: "Readiness monitors complete, no pending code",
    when: ["forced-induction", "calibration-changed"],
    basis: "contract",
    because: "A controller was written: every emission monitor has to run through and none is ever muted.",
    source: `${commonPractice} In-service emission rules of the state may ask for more. ${confirm}`,
    evidenceKind: "record",
  },
  {
    code: "camera-report",
    title: "Camera and radar recalibration report",
    when: ["camera-recalibration"],
    basis: "safety",
    because:
      "Ride height or tyres changed: a driver-assistance camera that looks a degree too high brakes too late.",
    source: `${commonPractice} The vehicle maker's procedure decides when and how. ${confirm}`,
    evidenceKind: "report",
  },
  {
    code: "tyre-placard",
    title: "Tyre placard and 140 km/h label fitted: photo",
    when: ["tyre-placard"],
    basis: "contract",
    because: "The placard says which load, pressure and speed the new tyres are for.",
    source: `The accepted quote. Tyre load and speed ratings in service: state vehicle standards rules. ${confirm}`,
    evidenceKind: "label",
  },
  {
    code: "forced-induction-approval",
    title: "Approval of the forced induction by the authority",
    country: "AU",
    when: ["forced-induction"],
    basis: "law-to-confirm",
    because:
      "Adding forced induction is usually a certified modification (code LA3 in VSB 14). In South Australia ask for the statement of requirements before work starts; a certificate of exemption is carried in the vehicle.",
    source: `VSB 14 section LA, code known from a secondary list only; South Australian government page on vehicle modification. ${confirm}`,
    evidenceKind: "declaration",
    signatory: "Vehicle standards authority of the state",
  },
  {
    code: "modified-vehicle-certificate",
    title: "Certificate for a modified vehicle",
    country: "AE",
    when: ["forced-induction", "calibration-changed", "exhaust-changed", "ride-height-or-tyres-changed"],
    basis: "law-to-confirm",
    because: "A modified vehicle is inspected and certified before it is used on the road.",
    source: `UAE Cabinet Decision 45, in force June 2017, known from press reports only. ${confirm}`,
    evidenceKind: "certificate",
    signatory: "Accredited inspection body",
  },
  {
    code: "noise-reading",
    title: "Stationary noise reading",
    country: "AU",
    when: ["exhaust-changed"],
    basis: "law-to-confirm",
    because:
      "A changed exhaust is measured against the model's stationary figure (ADR 83/00 signature value).",
    source: `ADR 83/00 sets the test; the allowance in service is set by each state and was not read for South Australia. ${confirm}`,
    evidenceKind: "report",
  },
  {
    code: "drivers-and-insurer-told",
    title: "Insurer and probationary drivers: customer told",
    country: "AU",
    when: ["forced-induction", "calibration-changed"],
    basis: "law-to-confirm",
    because:
      "More power may change who may drive the vehicle (power-to-mass limits for provisional drivers) and what the insurer covers.",
    source: `State rules for provisional drivers, known from secondary pages. ${confirm}`,
    evidenceKind: "declaration",
  },
  {
    code: "trailer-brake-trial",
    title: "Trailer brakes tried at walking pace: record",
    when: ["trailer-brakes"],
    basis: "good-practice",
    because: "A controller that is set for another trailer brakes too much or not at all.",
    source: commonPractice,
    evidenceKind: "declaration",
  },
  {
    code: "re-torque-booked",
    title: "Re-torque visit at 500 to 1,000 km agreed",
    when: ["re-torque-promised"],
    basis: "contract",
    because:
      "Gaskets and brackets settle, and the visit is in the price: it is agreed when the keys change hands.",
    source: "The accepted quote.",
    evidenceKind: "record",
  },
  {
    code: "tax-invoice",
    title: "Tax invoice given",
    country: "AU",
    when: [],
    basis: "law-to-confirm",
    because:
      "A tax invoice is due within 28 days of a request; at 1,000 dollars and over it names the customer.",
    source:
      "A New Tax System (Goods and Services Tax) Act 1999, section 29-70, and its explanatory memorandum of 2010.",
    evidenceKind: "invoice",
  },
  {
    code: "maker-warranty",
    title: "Maker's warranty registered within 14 days",
    when: ["warranted-parts"],
    basis: "good-practice",
    because:
      "Serial numbers, proof sheet and fitter reach the part's maker in time, or the cover is ours alone.",
    source: commonPractice,
    evidenceKind: "record",
  },
];
