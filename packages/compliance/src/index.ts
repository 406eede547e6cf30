export { type Abn, abn } from "./abn/abn";
export { type CheckDigit, type Vin, vin } from "./vin/vin";
