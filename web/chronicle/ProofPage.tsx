import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { CheckFile } from "./CheckFile.tsx";
import { Checkpoints } from "./Checkpoints.tsx";
import styles from "./chronicle.module.css";
import { ProveHistory } from "./ProveHistory.tsx";

/** That nothing was changed behind anybody's back: the history made again, checkpoints, files that others kept. */
export const ProofPage = () => (
  <article className={styles["page"]}>
    <header className={styles["head"]}>
      <InTheHouse />
      <PageHeading title="Proof">Proof that nothing was rewritten</PageHeading>
      <p className={styles["note"]}>
        Each revision and each write carries a hash over its content and over the one before it, so that a row
        that is changed behind the program is found, and where. A history that was made anew as a whole is
        found by what others kept.
      </p>
    </header>
    <ProveHistory />
    <Checkpoints />
    <CheckFile />
    <section className={styles["section"]} aria-labelledby="elsewhere">
      <h2 id="elsewhere">How another house checks this one</h2>
      <ol className={styles["steps"]}>
        <li>Save a checkpoint above and give the file away; it holds no name and no secret.</li>
        <li>
          Later that house sends it back, and it is checked above, or with{" "}
          <code className={styles["code"]}>npm run verify -- --checkpoint file.json</code> on this machine, or
          on a copy of the store anywhere.
        </li>
        <li>
          Without this program: take the member “signature” out of the file, write the rest as canonical JSON
          (RFC 8785), and check it with Ed25519 (RFC 8032) and the last of its keys. The first 20 digits of
          the SHA-256 of the first key are the name of the house.
        </li>
      </ol>
    </section>
  </article>
);
