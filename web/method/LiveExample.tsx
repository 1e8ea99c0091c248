import { TurningPiece } from "../answers/TurningPiece.tsx";
import type { Example } from "./examples.ts";
import styles from "./MethodPage.module.css";

/** A section of the page with its words and its example, which is examined while one reads. */
export const LiveExample = ({ example }: { example: Example }) => (
  <section id={example.id}>
    <h2>{example.title}</h2>
    <div className={styles["live"]}>
      {example.says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <TurningPiece
        piece={example.piece}
        asItIs={example.asItIs}
        turns={example.turns}
        label={example.label}
        unfolds={example.unfolds ?? []}
      />
    </div>
  </section>
);
