/** A role is what a person may do; beyond it, skills say what they are able to do. */
export const roles = ["desk", "manager", "technician", "owner"] as const;
export type Role = (typeof roles)[number];

/** Who acts. A person signed in, a customer by signed link, or the workshop's own set-up. */
export type Actor =
  | {
      readonly kind: "person";
      readonly workshopId: string;
      readonly personId: string;
      readonly sessionCounter: number;
    }
  | {
      readonly kind: "customer";
      readonly workshopId: string;
      readonly linkId: string;
      readonly versionId: string;
    }
  | { readonly kind: "nobody" };

/** The person as the database knows them at this moment: never as a token remembers them. */
export type ActingPerson = {
  readonly id: string;
  readonly name: string;
  readonly email: string;
  readonly roles: readonly Role[];
  readonly skills: readonly string[];
};
