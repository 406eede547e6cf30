import { signIn } from "@buildproof/workshop";
import type { NextAuthOptions } from "next-auth";
import CredentialsProvider from "next-auth/providers/credentials";
import { house } from "./house";

/** One working day. */
const sessionSeconds = 12 * 60 * 60;

/**
 * Sessions are tokens that say who and under which "sign out everywhere" count; what the person may do is
 * read from the database in each use case.
 */
export const authOptions: NextAuthOptions = {
  session: { strategy: "jwt", maxAge: sessionSeconds, updateAge: 60 * 60 },
  pages: { signIn: "/sign-in", error: "/sign-in" },
  providers: [
    CredentialsProvider({
      credentials: { email: {}, password: {} },
      async authorize(credentials, request) {
        const forwarded: unknown = request.headers?.["x-forwarded-for"];
        const result = await signIn(
          {
            ...house(),
            actor: { kind: "nobody" },
            now: () => new Date(),
            requestId: crypto.randomUUID(),
            address: lastAddress(typeof forwarded === "string" ? forwarded : null),
          },
          { email: credentials?.email ?? "", password: credentials?.password ?? "" },
        );
        return result.ok ? { id: result.value.personId, ...result.value } : null;
      },
    }),
  ],
  logger: {
    error(code, metadata) {
      // A cookie that was changed or is another server's: its holder is asked to sign in, and that is all.
      if (code === "JWT_SESSION_ERROR") console.warn("A session cookie that is not ours was turned away.");
      else console.error(`next-auth ${code}`, metadata);
    },
  },
  callbacks: {
    jwt({ token, user }) {
      return user
        ? {
            ...token,
            personId: user.personId,
            workshopId: user.workshopId,
            sessionCounter: user.sessionCounter,
          }
        : token;
    },
    session({ session, token }) {
      return {
        expires: session.expires,
        user: {
          personId: token.personId,
          workshopId: token.workshopId,
          sessionCounter: token.sessionCounter,
        },
      };
    },
  },
};

/** The nearest hop's word for who is asking: earlier entries are the caller's own claims. */
export function lastAddress(forwarded: string | null): string {
  return forwarded?.split(",").at(-1)?.trim() || "unknown";
}
