import { PAD_CENTURY, PAD_YEAR } from "#server/domain/pad-for.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Cautions } from "./Cautions.tsx";
import styles from "./MethodPage.module.css";

/** What the engine does, what it assumes, and what to be careful of. */
export const MethodPage = () => (
  <article className={styles["page"]}>
    <PageHeading title="Method">How a finding is made, and what it is not</PageHeading>
    <section>
      <h2>From what is seen to its years</h2>
      <p>
        A feature is walked back along cited claims: what it could only be made with, when that came, in which
        region, until when. Where a thing could be made in several ways, the years of all of them count, gaps
        and all. Each step keeps its source and its basis: <em>published</em> with the place in the source,{" "}
        <em>common practice</em> where no single source stands for it, <em>from memory</em> where nobody has
        confirmed it yet.
      </p>
    </section>
    <section>
      <h2>Possible and usual are two things</h2>
      <p>
        Physical claims say that a tool, a material or a design did not yet exist; they alone can make years
        impossible. Practice claims say what was habit or fashion; a piece outside them is out of its time,
        and nothing more. A rejected or merely proposed claim counts for nothing, and so does one whose scope
        does not reach the piece.
      </p>
    </section>
    <section>
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
      </ul>
    </section>
    <section>
      <h2>When it says nothing</h2>
      <p>
        Silence has a reason, and the reason is shown: no date is known for the region, the list of ways is
        open, the claim is meant for another form, an exception holds. What would set a finding aside and was
        not looked for is named beside it, so that it can be looked for.
      </p>
    </section>
    <section>
      <h2>The same answer later</h2>
      <p>
        Every answer names the <TextLink to="/revisions">revision of the evidence</TextLink> it was given on.
        The same piece on the same revision gives the same report, to the byte.
      </p>
    </section>
    <Cautions />
  </article>
);
