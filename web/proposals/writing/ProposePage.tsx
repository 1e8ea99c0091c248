import { useState } from "react";
import { Link, useSearch } from "wouter";
import { InTheHouse } from "../../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../../shared/ui/PageHeading.tsx";
import styles from "../proposals.module.css";
import { BatchForm } from "./BatchForm.tsx";
import { FILLED_BY_ADDRESS, WRITING_KINDS } from "./kinds.ts";
import { WritingOf } from "./WritingOf.tsx";
import { WrittenDraft } from "./WrittenDraft.tsx";
import own from "./writing.module.css";

const BATCH = { id: "batch", name: "many claims from a table" } as const;

/** Where something is proposed: what kind, then its form. */
export function ProposePage() {
  const params = new URLSearchParams(useSearch());
  const asked = params.get("kind") ?? "claim";
  const draft = params.get("draft");
  /** A draft that was begun here is gone on with, not opened anew. */
  const [begun, setBegun] = useState<string>();
  const isBatch = asked === BATCH.id;
  const kind = WRITING_KINDS.find(({ id }) => id === asked) ?? WRITING_KINDS[0];
  const start = Object.fromEntries(
    FILLED_BY_ADDRESS.flatMap((name) => {
      const value = params.get(name);
      return value ? [[name, value]] : [];
    }),
  );
  const title = isBatch ? "Propose many claims" : kind.title;
  const opened = draft !== null && draft !== begun ? draft : undefined;
  return (
    <article className={`${styles["page"]} ${own["wide"]}`}>
      <header className={styles["head"]}>
        <InTheHouse />
        <PageHeading title={title}>{title}</PageHeading>
        <p className={styles["note"]}>
          What you write is kept as a draft that nobody else sees. Once you hand it in, others read it, and
          somebody decides; nothing counts before.
        </p>
        <nav aria-label="What to propose">
          <ul className={own["kinds"]}>
            <li className={own["beside"]}>Propose</li>
            {[...WRITING_KINDS, BATCH].map(({ id, name }) => (
              <li key={id}>
                <Link href={`/house/propose?kind=${id}`} aria-current={id === asked ? "page" : undefined}>
                  {name}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      {isBatch ? (
        <BatchForm />
      ) : opened === undefined ? (
        <WritingOf
          key={`${kind.id} ${JSON.stringify(start)}`}
          kind={kind}
          begun={undefined}
          start={{ fields: start, title: "", why: "" }}
          onBegun={setBegun}
        />
      ) : (
        <WrittenDraft key={opened} id={opened} onBegun={setBegun} />
      )}
    </article>
  );
}
