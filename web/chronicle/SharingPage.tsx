import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import styles from "./chronicle.module.css";
import { GiveChanges } from "./GiveChanges.tsx";
import { TakeChanges } from "./TakeChanges.tsx";

/** What this house gives to others, and takes from them. */
export const SharingPage = () => (
  <article className={styles["page"]}>
    <header className={styles["head"]}>
      <InTheHouse />
      <PageHeading title="Other houses">Sharing with other houses</PageHeading>
      <p className={styles["note"]}>
        Two houses that began with the same evidence go their own ways. Each gives the other what it accepted,
        as a signed file; nothing that comes in counts before somebody here has accepted it.
      </p>
    </header>
    <GiveChanges />
    <TakeChanges />
  </article>
);
