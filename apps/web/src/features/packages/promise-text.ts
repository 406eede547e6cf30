import type { ContentOf } from "@buildproof/workshop";

/** What a package promises, in a few words; a dash where it promises nothing that can be measured. */
export function promiseText(promise: ContentOf<"package">["promise"]): string {
  if (!promise) return "–";
  const tow = promise.towKg === undefined ? [] : [`tows ${promise.towKg.toLocaleString("en-AU")} kg`];
  const power = "lowKw" in promise ? [`${promise.lowKw}–${promise.highKw} kW at the hubs`] : [];
  return [...power, ...tow].join(", ");
}
