import { refusals } from "../core/result";

export const refuseApi = refusals({
  "token-not-found": () => "This token is not of your workshop. Go back to the list of tokens.",
  "token-name-taken": () => "A token in use has that name already. Choose another, or revoke that one first.",
  "no-caller": () =>
    "Send a workshop's token as Authorization: Bearer TOKEN, or sign in. The owner makes tokens under Settings.",
  "token-unknown": () =>
    "This token is not known. Check that it was copied whole, or ask the owner for a new one.",
  "token-revoked": () => "This token was revoked. Ask the owner for a new one.",
  "too-many-calls": (d: { retryAfterS: number }) =>
    `These are too many calls in one minute. Wait ${d.retryAfterS} s and go on.`,
});
