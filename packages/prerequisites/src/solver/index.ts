/**
 * The solver behind a web request: `completePrerequisites(question, clingoSearch(5_000, request.signal))`. It runs in a worker
 * thread of its own; one question is searched at a time in a process, and the others wait within their own limits. Next
 * must leave `clingo-wasm` outside its bundle (`serverExternalPackages`): the worker and its program lie beside the
 * package's own source.
 */
export { clingoSearch } from "./clingo-search";
