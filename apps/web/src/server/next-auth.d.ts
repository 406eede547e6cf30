import type { SignedIn } from "@buildproof/workshop";

declare module "next-auth" {
  interface User extends SignedIn {}
  interface Session {
    user: SignedIn;
  }
}

declare module "next-auth/jwt" {
  interface JWT extends SignedIn {}
}
