import { useSuspenseQuery } from "@apollo/client/react";
import { Suspense } from "react";
import { useSearchParams } from "wouter";
import { readRows } from "../shared/apollo/read-rows.ts";
import type { ProposalKind, ProposalState } from "../shared/apollo/schema-types.graphql.ts";
import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Select } from "../shared/ui/Select.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { ProposalList } from "./ProposalList.tsx";
import { ProposalsInStateDocument, ProposalsToReviewDocument } from "./ProposalsPage.graphql.ts";
import { kindWords } from "./proposal-words.ts";
import styles from "./proposals.module.css";
import { RegionField } from "./RegionField.tsx";

const AT_ONCE = 20;

interface Narrowed {
  readonly kind: ProposalKind | null;
  readonly region: string | null;
}

const LISTS = [
  { id: "review", label: "waiting for a reviewer" },
  { id: "mine", label: "my own" },
  { id: "asked", label: "changes asked for" },
  { id: "accepted", label: "accepted" },
  { id: "declined", label: "declined" },
  { id: "all", label: "all" },
] as const;
type ListId = (typeof LISTS)[number]["id"];

const STATES: Readonly<Partial<Record<ListId, ProposalState>>> = {
  asked: "CHANGES_ASKED_FOR",
  accepted: "ACCEPTED",
  declined: "DECLINED",
};
const EMPTY: Readonly<Record<ListId, string>> = {
  review: "Nothing waits for a reviewer here. Take a filter away, or look at all proposals.",
  mine: "You have proposed nothing here yet. A claim or a term that is wrong can be corrected from its page.",
  asked: "Nobody is asked to change a proposal.",
  accepted: "Nothing was accepted here yet.",
  declined: "Nothing was declined here.",
  all: "There is no proposal here yet. A claim or a term that is wrong can be corrected from its page.",
};

function ToReview({ kind, region }: Narrowed) {
  const variables = { kind, region };
  const { data, fetchMore, client } = useSuspenseQuery(ProposalsToReviewDocument, {
    variables: { ...variables, first: AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  return (
    <ProposalList
      list={data.proposalsToReview}
      onMore={(after) => fetchMore({ variables: { after } })}
      onRead={(wanted) => readRows(client, ProposalsToReviewDocument, variables, "proposalsToReview", wanted)}
      empty={EMPTY.review}
    />
  );
}

function InState({ list, kind, region }: Narrowed & { list: ListId }) {
  const variables = { state: STATES[list] ?? null, mine: list === "mine", kind, region };
  const { data, fetchMore, client } = useSuspenseQuery(ProposalsInStateDocument, {
    variables: { ...variables, first: AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  return (
    <ProposalList
      list={data.proposals}
      onMore={(after) => fetchMore({ variables: { after } })}
      onRead={(wanted) => readRows(client, ProposalsInStateDocument, variables, "proposals", wanted)}
      empty={EMPTY[list]}
    />
  );
}

const isKind = (text: string | null): text is ProposalKind => text !== null && text in kindWords;
const KINDS = [
  { id: "any", label: "any" },
  ...Object.entries(kindWords).map(([id, label]) => ({ id, label })),
];

/** The proposals of the house: the queue of the reviewers first, by kind and region. */
export function ProposalsPage() {
  const [params, setParams] = useSearchParams();
  const list = LISTS.find(({ id }) => id === params.get("list"))?.id ?? "review";
  const asked = params.get("kind");
  const kind = isKind(asked) ? asked : null;
  const region = params.get("region");
  const set = (name: string, value: string | undefined) =>
    setParams(
      (before) => {
        const next = new URLSearchParams(before);
        if (value) next.set(name, value);
        else next.delete(name);
        return next;
      },
      { replace: true },
    );
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <InTheHouse />
        <PageHeading title="Proposals">Proposals</PageHeading>
        <p className={styles["note"]}>
          Changes of the evidence that somebody asks for. Nothing counts before a reviewer accepts it.
        </p>
      </header>
      <div className={styles["filters"]}>
        <Select label="Which" choices={LISTS} value={list} onChange={(id) => set("list", id)} />
        <Select
          label="Kind"
          choices={KINDS}
          value={kind ?? "any"}
          onChange={(id) => set("kind", id === "any" ? undefined : id)}
        />
        <RegionField value={region ?? undefined} onChange={(id) => set("region", id)} />
      </div>
      <section aria-label="The proposals">
        <Suspense fallback={<Waiting what="the proposals" />}>
          {list === "review" ? (
            <ToReview key={`${kind} ${region}`} kind={kind} region={region} />
          ) : (
            <InState key={`${list} ${kind} ${region}`} list={list} kind={kind} region={region} />
          )}
        </Suspense>
      </section>
    </article>
  );
}
