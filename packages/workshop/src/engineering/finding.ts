/** What is found of one limit, graded in words; the sentence says what to do where it is not fit. */
export type ChassisFinding = {
  readonly id: string;
  readonly grade: "fit" | "watch" | "stop";
  readonly sentence: string;
};

const whole = new Intl.NumberFormat("en-AU", { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat("en-AU", { maximumFractionDigits: 1 });

/** "1,250 kg"; below ten to the tenth, so that a little over is not told as nothing. */
export function kilograms(kg: number): string {
  return `${Math.abs(kg) < 10 ? tenth.format(kg) : whole.format(kg)} kg`;
}

export function oneDecimal(value: number): string {
  return tenth.format(value);
}
