import { ImpossibleInputError } from "@buildproof/units";
import { refuseOutside } from "../question/refuse-outside";
import { type MetricThread, metricThread, pitchDiameter, stressArea } from "./metric-thread";
import { type PropertyClass, proofStress } from "./property-class";

/** Friction is given once: as one nut factor, or by thread and head. */
export type BoltTorqueQuestion = {
  readonly thread: string;
  readonly propertyClass: PropertyClass;
  /** Share of the proof load. */
  readonly preloadPct: number;
  readonly frictionK?: number | undefined;
  readonly threadFriction?: number | undefined;
  readonly headFriction?: number | undefined;
  /** Mean diameter of the bearing face under the head or nut. */
  readonly headBearingDiameterMm?: number | undefined;
};

export type BoltTorque = {
  readonly pitchMm: number;
  readonly stressAreaMm2: number;
  readonly proofStressMPa: number;
  readonly preloadKN: number;
  /** Torque ÷ (diameter × preload), given or worked out. */
  readonly frictionK: number;
  readonly torqueNm: number;
};

/**
 * Tightening torque of a flat-headed bolt. The preload it gives scatters by 25 % lubricated and 35 %
 * dry, so the maker's figure always comes first; one-use, angle-tightened and cone-seated joints have
 * no other.
 *
 * @source  Torque = K·d·F (nut factor). K from friction: VDI 2230, M = F·(0.16·P + 0.58·d₂·μ_thread +
 *          D_k/2·μ_head), from memory; it reproduces that guideline's printed tables. Proof load and
 *          stress area: ISO 898-1.
 * @vectors shared/reference/bolt-torque.json
 * @throws  ImpossibleInputError for an unknown thread, or friction given twice or not at all.
 */
export function boltTorque(question: BoltTorqueQuestion): BoltTorque {
  const thread = metricThread(question.thread);
  refuseOutside(question.preloadPct, "preloadPct", 1, 100);
  const frictionK = nutFactor(question, thread);
  const stressAreaMm2 = stressArea(thread);
  const proofStressMPa = proofStress(question.propertyClass, thread.diameterMm);
  const preloadKN = ((question.preloadPct / 100) * proofStressMPa * stressAreaMm2) / 1000;
  return {
    pitchMm: thread.pitchMm,
    stressAreaMm2,
    proofStressMPa,
    preloadKN,
    frictionK,
    // mm × kN is N·m.
    torqueNm: frictionK * thread.diameterMm * preloadKN,
  };
}

function nutFactor(question: BoltTorqueQuestion, thread: MetricThread): number {
  const { frictionK, threadFriction, headFriction, headBearingDiameterMm } = question;
  const parts = [threadFriction, headFriction, headBearingDiameterMm];
  if (frictionK !== undefined) {
    if (parts.some((part) => part !== undefined)) {
      throw new ImpossibleInputError(
        "friction-twice",
        "Give the friction once: frictionK, or threadFriction, headFriction and headBearingDiameterMm.",
        "frictionK",
      );
    }
    refuseOutside(frictionK, "frictionK", 0.05, 1);
    return frictionK;
  }
  if (threadFriction === undefined || headFriction === undefined || headBearingDiameterMm === undefined) {
    const names = ["threadFriction", "headFriction", "headBearingDiameterMm"];
    const path = parts.every((part) => part === undefined)
      ? "frictionK"
      : (names.find((_, at) => parts[at] === undefined) ?? "frictionK");
    throw new ImpossibleInputError(
      "friction-missing",
      `The field ${path} is missing: give frictionK, or threadFriction, headFriction and headBearingDiameterMm.`,
      path,
    );
  }
  refuseOutside(threadFriction, "threadFriction", 0, 1);
  refuseOutside(headFriction, "headFriction", 0, 1);
  const { diameterMm, pitchMm } = thread;
  refuseOutside(headBearingDiameterMm, "headBearingDiameterMm", diameterMm, 5 * diameterMm);
  const armMm =
    0.16 * pitchMm +
    0.58 * pitchDiameter(thread) * threadFriction +
    (headBearingDiameterMm / 2) * headFriction;
  return armMm / diameterMm;
}
