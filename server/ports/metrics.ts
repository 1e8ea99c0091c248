/** Names and values from closed lists alone: never what a person typed, never an id. */
export type Labels = Readonly<Record<string, string>>;

interface About {
  /** `scribeline_…`, in small letters and `_`; ends with the unit where there is one. A counter is shown with `_total`. */
  readonly name: string;
  readonly help: string;
  readonly unit?: "seconds" | "bytes" | "ratio";
}

/** One number that only grows, or that goes up and down. */
export interface Numbers extends About {
  readonly kind: "counter" | "gauge";
  readonly samples: readonly { readonly labels?: Labels; readonly value: number }[];
}

/** How often something took how much. */
export interface Distributions extends About {
  readonly kind: "histogram";
  /** Upper bounds, growing. */
  readonly bounds: readonly number[];
  /** `counts`: how many lay up to each bound and above the one before; the last those above all. */
  readonly samples: readonly {
    readonly labels?: Labels;
    readonly counts: readonly number[];
    readonly sum: number;
  }[];
}

export type Metric = Numbers | Distributions;

/** What a part of the program tells of itself when it is asked, every few seconds: quick, and without a side effect. */
export type Tell = () => readonly Metric[] | Promise<readonly Metric[]>;
