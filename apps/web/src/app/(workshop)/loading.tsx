// Drawn inside the shell, so that the way to every other page stays open.
export { default } from "../loading";
