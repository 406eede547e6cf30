import {
  type CatalogueProof,
  countText,
  findingSentence,
  type LimitProof,
  limitSentence,
  type ProofFinding,
  type ProofWords,
} from "@buildproof/prerequisites";
import type { Catalogue } from "../../builds/catalogue-rows";
import { rulesFor } from "../../builds/prerequisite-model";
import type { ModelToProve } from "./proof-subject";

/** What is proven of a catalogue, vehicle by vehicle, in words. */
export type ProofReport = {
  readonly vehicles: readonly VehicleProof[];
  readonly findings: readonly ProofLine[];
};

export type VehicleProof = {
  readonly code: string;
  readonly name: string;
  readonly counts: readonly CountLine[];
  readonly limits: readonly LimitLine[];
};

export type CountLine = {
  /** Name of the package that is in the builds; null: any build. */
  readonly package: string | null;
  readonly builds: string;
  /** Ways to take the package's choices and options; null where it leaves none. */
  readonly ways: string | null;
};

/** `wrong`: to be put right; `idle`: says nothing; `known`: so by the rules; `open`: not settled in time. */
export type ProofLine = {
  readonly standing: "wrong" | "idle" | "known" | "open";
  readonly sentence: string;
  /** Names of the vehicle models it is so on. */
  readonly vehicles: readonly string[];
};

export type LimitLine = {
  readonly limit: string;
  readonly name: string;
  readonly verdict: LimitProof["verdict"];
  readonly sentence: string;
  /** Codes of the items of a build that exceeds it. */
  readonly example: readonly string[] | null;
};

export type ProvenModel = {
  readonly model: ModelToProve;
  readonly proof: CatalogueProof;
  readonly words: ProofWords;
};

export function proofReport(catalogue: Catalogue, proven: readonly ProvenModel[]): ProofReport {
  const lines = new Map<string, { standing: ProofLine["standing"]; vehicles: string[] }>();
  for (const { model, proof, words } of proven) {
    for (const finding of proof.findings) {
      if (!isTold(catalogue, proven, finding)) continue;
      const sentence = findingSentence(finding, words);
      const line = lines.get(sentence) ?? { standing: standingOf(finding), vehicles: [] };
      line.vehicles.push(model.name);
      lines.set(sentence, line);
    }
  }
  return {
    vehicles: proven.map(vehicleProof),
    findings: [...lines].map(([sentence, line]) => ({ ...line, sentence })),
  };
}

function standingOf(finding: ProofFinding): ProofLine["standing"] {
  switch (finding.kind) {
    case "nothing-buildable":
    case "item-never":
    case "package-never":
    case "option-never":
    case "rule-contradicted":
      return "wrong";
    case "rule-never-applies":
    case "rule-always-kept":
      return "idle";
    case "forces":
      // A package is sold as complete.
      return finding.by && "package" in finding.by ? "wrong" : "known";
    case "only-at-least":
    case "only-below":
      return "known";
    case "unsettled":
      return "open";
  }
}

function vehicleProof({ model, proof, words }: ProvenModel): VehicleProof {
  return {
    code: model.code,
    name: model.name,
    counts: proof.counts.map((count) => ({
      package: count.package === null ? null : words.package(count.package),
      builds: countText(count),
      ways: count.ways && countText({ isExact: count.ways.isExact, builds: count.ways.count }),
    })),
    limits: proof.limits.map((limit) => ({
      limit: limit.limit,
      name: words.limit(limit.limit).name,
      verdict: limit.verdict,
      sentence: limitSentence(limit, words),
      example: limit.example?.items ?? null,
    })),
  };
}

/**
 * A rule says nothing only when it says nothing on any vehicle it concerns. A capacity that others keep is said
 * among the limits, where it is good news.
 */
function isTold(catalogue: Catalogue, proven: readonly ProvenModel[], finding: ProofFinding): boolean {
  if (!isIdle(finding)) return true;
  const row = catalogue.rules.find(({ code }) => code === finding.rule);
  if (row?.kind === "capacity") return false;
  const concerned = proven.filter(({ model }) =>
    rulesFor(catalogue, model.code).some(({ code }) => code === finding.rule),
  );
  return concerned.every(({ proof }) =>
    proof.findings.some((each) => isIdle(each) && each.rule === finding.rule),
  );
}

type IdleRule = Extract<ProofFinding, { readonly kind: "rule-never-applies" | "rule-always-kept" }>;

function isIdle(finding: ProofFinding): finding is IdleRule {
  return finding.kind === "rule-never-applies" || finding.kind === "rule-always-kept";
}
