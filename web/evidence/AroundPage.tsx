import { useSuspenseQuery } from "@apollo/client/react";
import { lazy, Suspense, useCallback, useMemo, useState } from "react";
import { useSearch } from "wouter";
import { AroundLegend } from "#web/graph/AroundLegend.tsx";
import type { TermRow } from "#web/graph/around-row.ts";
import { useReadOn } from "../shared/navigation/reading-revision.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import { signsIn } from "../shared/years/signs-in.ts";
import { YearsLegend } from "../shared/years/YearsLegend.tsx";
import { AroundChosen } from "./AroundChosen.tsx";
import { AroundList } from "./AroundList.tsx";
import { AroundPageDocument } from "./AroundPage.graphql.ts";
import styles from "./AroundPage.module.css";
import { aroundEntries, sayDated, sayGroups } from "./around-groups.ts";
import { aroundRows, extraLinks } from "./around-rows.ts";
import { Absent } from "./history/Absent.tsx";
import { Kicker } from "./Kicker.tsx";
import reading from "./reading.module.css";

const AroundView = lazy(async () => ({ default: (await import("#web/graph/AroundView.tsx")).AroundView }));

/** How many of one kind and side are shown at first, and when more are asked for. */
const EACH = { few: 8, many: 24 } as const;

/** What stands around a term: drawn with the years across, and listed. */
export function AroundPage({ id }: { id: string }) {
  const asked = new URLSearchParams(useSearch());
  const steps = asked.get("steps") === "2" ? 2 : 1;
  const each = asked.get("more") === "yes" ? EACH.many : EACH.few;
  const { data } = useSuspenseQuery(AroundPageDocument, { variables: { id, steps, each, ...useReadOn() } });
  const around = data.term?.around;
  const entries = useMemo(() => (around ? aroundEntries(around) : []), [around]);
  const rows = useMemo(() => (around ? aroundRows(around, entries) : []), [around, entries]);
  const extras = useMemo(() => extraLinks(entries), [entries]);
  const [open, setOpen] = useState<string>();
  const [lit, setLit] = useState<string>();
  const choose = useCallback((row: string | undefined) => {
    setOpen(row);
    setLit(row);
  }, []);
  if (!data.term || !around) return <Absent id={id} />;
  const { term } = data;
  const [centre] = around.members;
  const terms = rows.filter((row): row is TermRow => row.type === "term");
  const neighbours = entries.filter((entry) => entry.type === "neighbour");
  const chosen = neighbours.find((entry) => entry.id === open);
  const address = (change: { steps?: "1" | "2"; more?: "yes" }) => {
    const asks = { steps: `${steps}`, ...(each === EACH.many ? { more: "yes" } : {}), ...change };
    const { steps: walked, ...others } = asks;
    const params = new URLSearchParams({ ...(walked === "2" ? { steps: walked } : {}), ...others });
    return `/terms/${id}/around${params.size > 0 ? `?${params}` : ""}`;
  };
  const isShort = entries.some((entry) => entry.type === "more" && entry.step === 1);
  return (
    <article className={styles["page"]}>
      <header className={reading["head"]}>
        <Kicker
          steps={[
            { to: `/evidence?kind=${term.kind}`, name: termKindWords[term.kind].many },
            ...term.broaderTerms
              .toReversed()
              .map((broader) => ({ to: `/terms/${broader.id}`, name: broader.label })),
            { to: `/terms/${id}`, name: term.label },
          ]}
        />
        <PageHeading title={`Around ${term.label}`}>Around {term.label}</PageHeading>
        <p className={reading["note"]}>{sayGroups(entries)}</p>
        <p className={`screen-only ${styles["choices"]}`}>
          {steps === 1 ? (
            <TextLink to={address({ steps: "2" })}>Walk two steps</TextLink>
          ) : (
            <TextLink to={address({ steps: "1" })}>One step only</TextLink>
          )}
          {isShort && each === EACH.few ? (
            <TextLink to={address({ more: "yes" })}>Show up to {EACH.many} of each</TextLink>
          ) : null}
          <TextLink to={`/terms/${id}`}>Its page</TextLink>
        </p>
        {steps === 2 ? (
          <p className={reading["beside"]}>
            The second step follows what is needed, what is typical, what alone was made where, and what is of
            a kind. Nothing is looked for beyond regions and kinds of part.
          </p>
        ) : null}
        {around.unread > 0 ? (
          <p className={reading["beside"]}>{around.unread} more claims name it; they were not read here.</p>
        ) : null}
      </header>
      {entries.length === 0 ? null : (
        <div className={styles["both"]}>
          <div className={styles["drawing"]}>
            <Suspense fallback={<Waiting what="the drawing" />}>
              <AroundView rows={rows} extras={extras} lit={lit} onChoose={choose} />
            </Suspense>
            {chosen ? <AroundChosen neighbour={chosen} onClose={() => choose(undefined)} /> : null}
            <AroundLegend kinds={kindsOf(terms)} looks={new Set(terms.slice(1).map(({ look }) => look))} />
            <YearsLegend only={signsIn(around.members.flatMap(({ dated }) => dated))} />
          </div>
          <AroundList
            title={`${neighbours.length === 1 ? "Its neighbour" : "Its neighbours"}, as they are drawn`}
            centre={centre && { label: term.label, says: sayDated(centre.dated, centre.datedCount) }}
            entries={entries}
            open={open}
            onOpen={choose}
            onLight={setLit}
          />
        </div>
      )}
    </article>
  );
}

const kindsOf = (rows: readonly TermRow[]) =>
  [...new Set(rows.map(({ kind }) => kind))].map((kind) => ({
    kind,
    word: termKindWords[kind.toUpperCase() as keyof typeof termKindWords].one,
  }));
