import type { Distributions, Labels, Metric } from "../ports/metrics.ts";

/** `openmetrics`: OpenMetrics 1.0. `plain`: the text format 0.0.4 that came before it, which everything reads. */
export type Format = "openmetrics" | "plain";

export const MEDIA_TYPES: Readonly<Record<Format, string>> = {
  openmetrics: "application/openmetrics-text; version=1.0.0; charset=utf-8",
  plain: "text/plain; version=0.0.4; charset=utf-8",
};

/** Metrics as text for whoever collects them. */
export function printMetrics(metrics: readonly Metric[], format: Format): string {
  const lines = metrics.flatMap((metric) => {
    const { name, kind, help, unit } = metric;
    // In the older format the family of a counter has the name of its samples.
    const family = kind === "counter" && format === "plain" ? `${name}_total` : name;
    return [
      `# TYPE ${family} ${kind}`,
      ...(unit && format === "openmetrics" ? [`# UNIT ${family} ${unit}`] : []),
      `# HELP ${family} ${format === "openmetrics" ? escaped(help) : help.replaceAll("\\", "\\\\").replaceAll("\n", "\\n")}`,
      ...(metric.kind === "histogram"
        ? metric.samples.flatMap((sample) => distribution(name, metric.bounds, sample))
        : metric.samples.map(
            ({ labels, value }) =>
              `${name}${kind === "counter" ? "_total" : ""}${inBraces(labels)} ${number(value)}`,
          )),
    ];
  });
  if (format === "openmetrics") lines.push("# EOF");
  return `${lines.join("\n")}\n`;
}

function distribution(
  name: string,
  bounds: Distributions["bounds"],
  { labels, counts, sum }: Distributions["samples"][number],
): string[] {
  let upTo = 0;
  const buckets = counts.map((count, at) => {
    upTo += count;
    const bound = bounds[at];
    const le = bound === undefined ? "+Inf" : canonical(bound);
    return `${name}_bucket${inBraces({ ...labels, le })} ${upTo}`;
  });
  return [
    ...buckets,
    `${name}_sum${inBraces(labels)} ${number(sum)}`,
    `${name}_count${inBraces(labels)} ${upTo}`,
  ];
}

function inBraces(labels: Labels = {}): string {
  const pairs = Object.entries(labels).map(([name, value]) => `${name}="${escaped(value)}"`);
  return pairs.length === 0 ? "" : `{${pairs.join(",")}}`;
}

const escaped = (text: string): string =>
  text.replaceAll("\\", "\\\\").replaceAll("\n", "\\n").replaceAll('"', '\\"');

/** A bound is a text that has to be the same everywhere: with a point, `1.0`. */
const canonical = (bound: number): string => (Number.isInteger(bound) ? bound.toFixed(1) : String(bound));

const number = (value: number): string => {
  if (Number.isNaN(value)) return "NaN";
  if (Number.isFinite(value)) return String(value);
  return value > 0 ? "+Inf" : "-Inf";
};
