import { useSuspenseQuery } from "@apollo/client/react";
import { id } from "#server/domain/ids.ts";
import { FeatureDrawing } from "#web/drawings/FeatureDrawing.tsx";
import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { FollowButton } from "../shared/chronicle/FollowButton.tsx";
import { useReadOn } from "../shared/navigation/reading-revision.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import { ClaimGroups } from "./ClaimGroups.tsx";
import { ClaimList } from "./ClaimList.tsx";
import { Contribute } from "./Contribute.tsx";
import { Absent } from "./history/Absent.tsx";
import { History } from "./history/History.tsx";
import { Kicker } from "./Kicker.tsx";
import { LookingNotes } from "./LookingNotes.tsx";
import { ReferenceTables } from "./ReferenceTables.tsx";
import styles from "./reading.module.css";
import { TermMargin } from "./TermMargin.tsx";
import { TermPageDocument } from "./TermPage.graphql.ts";
import { YearsByRegion } from "./YearsByRegion.tsx";

const CLAIMS_AT_ONCE = 50;
/** Side of the drawing of a term, in pixels: large enough for its words and scale bar. */
const DRAWING_SIZE = 240;
const termId = (text: string) => id<"term">(text);

/** Regions, forms and kinds of part are what claims are scoped by; they need no claims of their own. */
const isDatedKind = (kind: TermKind) => kind !== "REGION" && kind !== "FORM" && kind !== "PART";

/** One term: what it is, its years by region, every claim about it and every claim that names it. */
export function TermPage({ id: named }: { id: string }) {
  const { data, fetchMore } = useSuspenseQuery(TermPageDocument, {
    variables: { id: named, first: CLAIMS_AT_ONCE, ...useReadOn() },
  });
  if (!data.term) return <Absent id={named} />;
  const { term } = data;
  const claims = term.claims.edges.map((edge) => edge.node);
  const naming = term.namedIn.edges.map((edge) => edge.node);
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <Kicker
          steps={[
            { to: `/evidence?kind=${term.kind}`, name: termKindWords[term.kind].many },
            ...term.broaderTerms
              .toReversed()
              .map((broader) => ({ to: `/terms/${broader.id}`, name: broader.label })),
          ]}
        />
        <PageHeading title={term.label}>{term.label}</PageHeading>
        {term.otherLabels.length > 0 ? (
          <p className={styles["also"]}>also called {term.otherLabels.join(", ")}</p>
        ) : null}
        {term.mergedInto ? (
          <p className={styles["merged"]}>
            Now called <TextLink to={`/terms/${term.mergedInto.id}`}>{term.mergedInto.label}</TextLink>, which
            stands for both. This name stays for what was recorded under it.
          </p>
        ) : null}
        <div className={styles["described"]}>
          {term.note ? <p className={styles["note"]}>{term.note}</p> : null}
          <FeatureDrawing
            term={termId(term.id)}
            broaderTerms={term.broaderTerms.map((broader) => termId(broader.id))}
            size={DRAWING_SIZE}
          />
        </div>
        <p className="screen-only">
          <TextLink to={`/terms/${term.id}/around`}>What stands around it, drawn</TextLink>
        </p>
        <Contribute of={term.id} />
        <FollowButton about={term.id} name={term.label} />
      </header>
      <div className={styles["main"]}>
        {term.looking ? <LookingNotes looking={term.looking} /> : null}
        <YearsByRegion claims={claims} />
        {claims.length > 0 || isDatedKind(term.kind) ? (
          <section className={styles["section"]}>
            <h2>
              Claims about it <span>· {term.claims.totalCount}</span>
            </h2>
            <ClaimGroups claims={claims} />
            <ShowMore
              list={term.claims}
              onMore={(after) => fetchMore({ variables: { after } })}
              label="Show more claims"
            />
          </section>
        ) : null}
        <ReferenceTables rows={term.referenceRows} />
        {naming.length > 0 ? (
          <section className={styles["section"]}>
            <h2>
              Claims that name it <span>· {term.namedIn.totalCount}</span>
            </h2>
            <ClaimList claims={naming} />
            <ShowMore
              list={term.namedIn}
              onMore={(afterNamed) => fetchMore({ variables: { afterNamed } })}
              label="Show more claims"
            />
          </section>
        ) : null}
        <History of={term.id} />
      </div>
      <TermMargin term={term} />
    </article>
  );
}
