// The package edtf ships no types; what the tests use of it.
declare module "edtf" {
  interface Read {
    readonly type: string;
    /** Milliseconds since 1970, or an infinity. */
    readonly min: number;
    readonly max: number;
    /** Of an interval: a date, Infinity where open, null where unknown. */
    readonly lower?: unknown;
    readonly upper?: unknown;
  }
  export default function edtf(text: string): Read;
}
declare module "edtf/sample" {
  export function sample(options: { count: number; level: 0 | 1 | 2 }): Iterable<string>;
}
