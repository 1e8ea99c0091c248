import { useSuspenseQuery } from "@apollo/client/react";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { NotAllFeatures } from "../shared/words/NotAllFeatures.tsx";
import { FeaturesOnPartDocument } from "./PartsPage.graphql.ts";
import styles from "./PartsPage.module.css";
import reading from "./reading.module.css";

const firstSentence = (note: string) => /^.+?[.?!](?=\s|$)/.exec(note)?.[0] ?? note;

/** What is looked for on a kind of part, then on kinds within it and around it, with a link each. */
export function FeaturesOnPart({ id }: { id: string }) {
  const { data } = useSuspenseQuery(FeaturesOnPartDocument, { variables: { id } });
  const { term } = data;
  if (term?.kind !== "PART")
    return <p className={reading["empty"]}>There is no kind of part with the id {id}.</p>;
  const total = term.featuresOnPart.reduce((sum, { features }) => sum + features.length, 0);
  return (
    <section aria-label={`Looked for on: ${term.label}`}>
      <h2>
        Looked for on: <TextLink to={`/terms/${term.id}`}>{term.label}</TextLink>
      </h2>
      {term.note ? <p className={reading["empty"]}>{term.note}</p> : null}
      {total === 0 ? (
        <p className={reading["empty"]}>
          No feature is looked for on it yet, nor on what it is part of. Its claims are on its own page.
        </p>
      ) : null}
      {term.featuresOnPart.map(({ part, features }) =>
        features.length === 0 ? null : (
          <Disclosure
            key={part?.id}
            isOpenAtFirst={part?.id === term.id}
            summary={`${part?.id === term.id ? "On it" : `On: ${part?.label}`} · ${features.length}`}
          >
            <ul>
              {features.map(({ id, label, note }) => (
                <li key={id}>
                  <TextLink to={`/terms/${id}`}>{label}</TextLink>
                  {note ? <span className={styles["says"]}>{firstSentence(note)}</span> : null}
                </li>
              ))}
            </ul>
          </Disclosure>
        ),
      )}
      {term.featuresOnPart.some(({ isCut }) => isCut) ? <NotAllFeatures /> : null}
    </section>
  );
}
