/** The invented demo wagon, for tests, benches and the plots of docs/engineering. Nothing that is sold rests on it. */
export { curvedDisplacement, leakyDisplacement, sampleBlower } from "./air/sample-blower";
export { samplePump } from "./power/sample-forecast";
export { sampleWagon } from "./road/sample-wagon";
