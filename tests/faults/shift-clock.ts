import { readFileSync } from "node:fs";

/**
 * For Node to load before a program: its clock is that of the machine and as many milliseconds as stand in the file that
 * FAULTS_CLOCK names; the file is read again at SIGUSR2. What measures time without a clock (`performance.now`) goes on.
 */
const file = process.env["FAULTS_CLOCK"] ?? "";
const RealDate = Date;
let shift = 0;
const read = (): void => {
  shift = Number(readFileSync(file, "utf8")) || 0;
};
read();
process.on("SIGUSR2", read);

class ShiftedDate extends RealDate {
  // biome-ignore lint/suspicious/noExplicitAny: the many ways to make a date
  constructor(...args: any[]) {
    // @ts-expect-error A date is made of any of them.
    super(...(args.length === 0 ? [RealDate.now() + shift] : args));
  }
  static override now(): number {
    return RealDate.now() + shift;
  }
}
globalThis.Date = ShiftedDate as DateConstructor;
