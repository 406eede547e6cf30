export { clingoSearch } from "./clingo-search";
