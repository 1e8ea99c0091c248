import styles from "./ScribedJoint.module.css";

/** Middles of the tails, px from the top. They flare away from the scribe line. */
const TAILS = [38, 74, 110];
const END = 14;
const SCRIBED = 66;
const TOP = 18;
const LOW = 130;

/** The pins between the tails: end grain, so hatched. */
const pins = [TOP, ...TAILS.flatMap((y) => [y - 15, y + 15]), LOW];
const narrow = [TOP, ...TAILS.flatMap((y) => [y - 10, y + 10]), LOW];

/** Corner of a drawer with its dovetails: the knife line that marks their depth outlasts the one who cut it. */
export const ScribedJoint = () => (
  <figure className={styles["figure"]}>
    <svg viewBox="0 0 400 148" width="100%" className={styles["drawing"]} aria-hidden="true">
      <defs>
        <pattern
          id="end-grain"
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V5" className={styles["hatch"]} />
        </pattern>
      </defs>
      {[0, 2, 4, 6].map((pin) => (
        <path
          key={pin}
          d={`M${END} ${pins[pin]}L${SCRIBED} ${narrow[pin]}V${narrow[pin + 1]}L${END} ${pins[pin + 1]}Z`}
          fill="url(#end-grain)"
          className={styles["pin"]}
        />
      ))}
      <path
        d="M24 33q40 4 92 1t118 3M22 43q60 -3 120 1t96 -1M26 70q70 5 120 1t92 2M24 79q50 -4 110 1t104 -2M28 106q60 3 100 0t110 2M24 115q64 -3 130 1t84 -1M76 57q60 3 160 -1M76 92q70 -3 158 1M76 25q70 3 160 0M76 124q80 -3 158 0"
        className={styles["grain"]}
      />
      <path d={`M238 ${TOP}H${END}V${LOW}H238`} className={styles["edge"]} />
      <path d={`M238 ${TOP}q7 18 0 37t1 38t-1 37`} className={styles["break"]} />
      <path d={`M${SCRIBED} 6V142`} className={styles["scribe"]} />
      <path d={`M${SCRIBED + 5} 9H254`} className={styles["leader"]} />
      <text x="260" y="13.5" className={styles["label"]}>
        scribe line
      </text>
    </svg>
    <figcaption className={styles["caption"]}>
      The knife cut that marks how deep a joint goes. It outlasts the one who made it, and it is evidence.
    </figcaption>
  </figure>
);
