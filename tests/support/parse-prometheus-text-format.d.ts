declare module "parse-prometheus-text-format" {
  interface Family {
    readonly name: string;
    readonly help: string;
    readonly type: string;
    readonly metrics: readonly {
      readonly value?: string;
      readonly labels?: Readonly<Record<string, string>>;
      readonly buckets?: Readonly<Record<string, string>>;
      readonly count?: string;
      readonly sum?: string;
    }[];
  }
  /** Reads the text format 0.0.4. Of histograms that differ by labels it keeps only the buckets of the last. */
  export default function parsePrometheusTextFormat(text: string): readonly Family[];
}
