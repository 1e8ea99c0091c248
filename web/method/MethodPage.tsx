import { PAD_CENTURY, PAD_YEAR } from "#server/domain/pad-for.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Cautions } from "./Cautions.tsx";
import { EXAMPLES } from "./examples.ts";
import { FeatureWalk } from "./FeatureWalk.tsx";
import { LiveExample } from "./LiveExample.tsx";
import styles from "./MethodPage.module.css";

/** What the engine does, shown on small pieces that it examines while one reads; what it assumes; what to be careful of. */
export const MethodPage = () => (
  <article className={styles["page"]}>
    <header className={styles["head"]}>
      <PageHeading title="How it works">How a finding is made, and what it is not</PageHeading>
      <p>
        Every example on this page is an invented scrap of a piece, examined now on the evidence as it stands.
        Change one thing and see what follows. What you see is what the{" "}
        <TextLink to="/">examination of a whole piece</TextLink> would show; the{" "}
        <TextLink to="/learn">lessons</TextLink> go through more of it.
      </p>
      <nav aria-label="On this page">
        <ul className={styles["contents"]}>
          <li>
            <a href="#walk">From what is seen to its years</a>
          </li>
          {EXAMPLES.map(({ id, title }) => (
            <li key={id}>
              <a href={`#${id}`}>{title}</a>
            </li>
          ))}
          <li>
            <a href="#assumed">What is assumed rather than cited</a>
          </li>
          <li>
            <a href="#cautions">Cautions</a>
          </li>
        </ul>
      </nav>
    </header>
    <section id="walk">
      <h2>From what is seen to its years</h2>
      <div className={styles["live"]}>
        <p>
          A feature is walked back along cited claims: what it could only be made with, when that came, in
          which region, until when. Where a thing could be made in several ways, the years of all of them
          count, gaps and all. Each step keeps its source and its basis: <em>published</em> with the place in
          the source, <em>common practice</em> where no single source stands for it, <em>from memory</em>{" "}
          where nobody has confirmed it yet. A claim that is rejected or only proposed counts for nothing.
        </p>
        <FeatureWalk />
      </div>
    </section>
    {EXAMPLES.map((example) => (
      <LiveExample key={example.id} example={example} />
    ))}
    <section id="assumed">
      <h2>What is assumed rather than cited</h2>
      <ul className={styles["assumed"]}>
        <li>
          “About” a year or a decade means {PAD_YEAR} years either side; about a century, {PAD_CENTURY}.
        </li>
        <li>
          Where no claim covers the region, nobody anywhere is taken to have had a thing before the earliest
          year claimed for it anywhere. Each finding that needs this says so, and any earlier record lifts it.
        </li>
        <li>
          Claims that disagree about the same thing in the same place stay alternatives: a finding is only as
          hard as the kindest of them allows, and names the ones that keep it open.
        </li>
        <li>What is not written down is unknown. It is never taken as absent.</li>
        <li>Nothing on a piece is later than the year in which it was looked at.</li>
        <li>
          Where probabilities are weighed, more is assumed. Every number of it stands on{" "}
          <TextLink to="/method/weighing">the page on how they are weighed</TextLink>, with what cannot be
          known.
        </li>
      </ul>
    </section>
    <section>
      <h2>The same answer later</h2>
      <p>
        Every answer names the <TextLink to="/house/history">revision of the evidence</TextLink> it was given
        on. The same piece on the same revision gives the same report, to the byte.
      </p>
    </section>
    <Cautions />
  </article>
);
