import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { Aged } from "./Aged.tsx";
import styles from "./Weights.module.css";
import { useWeighed } from "./weighing-desk.ts";
import { type WeightBar, type WeightBars, weightBars } from "./weight-bars.ts";

/** "+0.9", "−1.1": a weight with its sign. */
const signed = (log10: number | null): string =>
  log10 === null ? "beyond" : `${log10 < 0 ? "−" : "+"}${Math.abs(log10).toFixed(1)}`;

/** What each thing seen weighs for and against the claimed years: steps that add up. */
export function WeightsSection() {
  const { weighed } = useWeighed();
  const { weights } = weighed.weighing;
  const words = weighed.words.weights;
  if (weights === undefined || words === undefined || weights.steps.length === 0) return null;
  const bars = weightBars(weights, words);
  const sum = bars.slight.reduce((all, { step }) => all + (step ?? 0), 0);
  return (
    <Aged stage="weights" aria-labelledby="weights-heading" className={styles["section"]}>
      <h2 id="weights-heading">
        What each thing seen weighs <span>· against the claim, or for it</span>
      </h2>
      <p className={styles["says"]}>{weighed.words.weightsTogether}</p>
      <p className={styles["line"]}>
        Each bar begins where the one above ends, so that they add up. The words tell what a thing weighs
        taken alone, which can be more or less than its step. Steps are powers of ten: 1 makes the claim ten
        times as probable beside all other years.
      </p>
      <div className={styles["table"]}>
        <div className={styles["head"]} aria-hidden="true">
          <span>against</span>
          <span>for</span>
        </div>
        <ul>
          {bars.told.map((bar) => (
            <Row key={bar.observations.join()} bar={bar} span={bars} />
          ))}
          {bars.slight.length > 0 ? (
            <li className={styles["row"]}>
              <span className={styles["name"]}>
                {bars.slight.length === 1 ? "One thing more" : `${bars.slight.length} things more`}
              </span>
              <Bar
                from={bars.slight[0]?.from ?? 0}
                to={bars.slight.at(-1)?.to ?? 0}
                span={bars}
                step={Math.abs(sum) < 0.05 ? null : sum}
              />
              <span className={styles["words"]}>next to nothing</span>
            </li>
          ) : null}
          <li className={`${styles["row"]} ${styles["total"]}`}>
            <span className={styles["name"]}>Together</span>
            <Bar from={0} to={bars.total ?? 0} span={bars} step={bars.total} />
            <span className={styles["words"]}>
              {bars.total === null ? "beyond what the model can weigh" : signed(bars.total)}
            </span>
          </li>
        </ul>
      </div>
      {bars.slight.length > 0 ? (
        <Disclosure summary="What says next to nothing of the claim">
          <ul className={styles["line"]}>
            {bars.slight.map(({ observations, seen }) => (
              <li key={observations.join()}>{seen}</li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </Aged>
  );
}

const Row = ({ bar, span }: { bar: WeightBar; span: WeightBars }) => (
  <li className={styles["row"]}>
    <span className={styles["name"]}>
      {bar.seen}
      {bar.linkedBy === undefined ? null : <span className={styles["linked"]}> {bar.linkedBy}</span>}
    </span>
    <Bar from={bar.from} to={bar.to} span={span} step={bar.step} />
    <span className={styles["words"]}>
      {bar.brief}
      {bar.alone === null || Math.abs(bar.alone) < 0.05 ? null : `, ${signed(bar.alone)}`}
    </span>
  </li>
);

interface BarProps {
  from: number;
  to: number;
  span: Pick<WeightBars, "least" | "greatest">;
  step: number | null;
}

const HIGH = 22;
/** Room beyond the outermost bars for the figures, in parts of the span. */
const AIR = 0.14;

/** A bar from one sum to the next: full towards the claim, hatched away from it, its step written at its end. */
function Bar({ from, to, span, step }: BarProps) {
  const wide = Math.max(span.greatest - span.least, 0.5);
  const at = (value: number) => ((value - span.least + AIR * wide) / (wide * (1 + 2 * AIR))) * 100;
  const [left, right] = [Math.min(from, to), Math.max(from, to)];
  const isAgainst = to < from;
  return (
    <span className={styles["plot"]}>
      <svg width="100%" height={HIGH} className={styles["bars"]} aria-hidden="true">
        <line x1={`${at(0)}%`} x2={`${at(0)}%`} y1="0" y2={HIGH} className={styles["zero"]} />
        <rect
          x={`${at(left)}%`}
          width={`${Math.max(at(right) - at(left), 0.4)}%`}
          y="6"
          height="10"
          className={isAgainst ? styles["against"] : styles["for"]}
        />
        {step === null || Math.abs(step) < 0.05 ? null : (
          <svg
            x={`${isAgainst ? at(left) : at(right)}%`}
            y={HIGH / 2}
            className={styles["over"]}
            aria-hidden="true"
          >
            <text
              x={isAgainst ? -5 : 5}
              y="4"
              textAnchor={isAgainst ? "end" : "start"}
              className={styles["step"]}
            >
              {signed(step)}
            </text>
          </svg>
        )}
      </svg>
      {step === null ? null : <span className="visually-hidden">step {signed(step)};</span>}
    </span>
  );
}
