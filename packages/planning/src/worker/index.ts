export { type AsideOptions, planAside } from "./plan-aside";
