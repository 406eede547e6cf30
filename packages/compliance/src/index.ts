export { type Abn, abn } from "./abn/abn";
export { type TraitItem, traitsOfItem } from "./obligations/item-traits";
export {
  type BuildTrait,
  buildTraits,
  type Obligation,
  type ObligationBasis,
} from "./obligations/obligation";
export { obligationsFor } from "./obligations/obligations-for";
export { type CheckDigit, type Vin, vin } from "./vin/vin";
