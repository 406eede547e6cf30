export type DemoPerson = {
  readonly name: string;
  readonly email: string;
  readonly roles: readonly ("desk" | "manager" | "technician" | "owner")[];
  readonly skills: readonly ("dyno-operator" | "calibrator" | "stores" | "second-signatory")[];
};

/** Everybody in the demo signs in with this; it opens nothing but invented data. */
export const demoPassword = "drive-gently-42";

/** The people of Saltbush Dyno & Driveline. Invented. */
export const demoPeople = [
  { name: "Noor Castellan", email: "noor@saltbush.example", roles: ["desk"], skills: [] },
  {
    name: "Marek Oduya",
    email: "marek@saltbush.example",
    roles: ["manager"],
    skills: ["dyno-operator", "stores", "second-signatory"],
  },
  {
    name: "Tilda Brennock",
    email: "tilda@saltbush.example",
    roles: ["technician"],
    skills: ["dyno-operator", "calibrator", "second-signatory"],
  },
  {
    name: "Joss Varga",
    email: "joss@saltbush.example",
    roles: ["technician"],
    skills: ["stores", "second-signatory"],
  },
  { name: "Irena Halloway", email: "irena@saltbush.example", roles: ["owner"], skills: [] },
] as const satisfies readonly DemoPerson[];

/** The people of Gulf Boost Works, the second workshop. Invented. */
export const gulfPeople = [
  { name: "Lena Farouki", email: "lena@gulfboost.example", roles: ["desk"], skills: [] },
  { name: "Samir Qadan", email: "samir@gulfboost.example", roles: ["owner"], skills: [] },
] as const satisfies readonly DemoPerson[];
