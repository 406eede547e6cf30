/** What a person may be able to do beyond their roles. */
export const skills = ["dyno-operator", "calibrator", "stores", "second-signatory"] as const;
export type Skill = (typeof skills)[number];
