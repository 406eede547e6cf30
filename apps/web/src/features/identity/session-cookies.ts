/** The names under which next-auth keeps its session, on http and on https. */
export const sessionCookies = ["next-auth.session-token", "__Secure-next-auth.session-token"];
