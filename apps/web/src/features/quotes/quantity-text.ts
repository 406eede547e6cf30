/** "2", "11.5 h", "3 days": how many, as a reader says it. */
export function quantityText(quantity: string, unit: string): string {
  if (unit === "each") return quantity;
  if (unit === "day") return quantity === "1" ? "1 day" : `${quantity} days`;
  return `${quantity} ${unit}`;
}
