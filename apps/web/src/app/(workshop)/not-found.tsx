// The same words as outside, inside the shell.
export { default } from "../not-found";
