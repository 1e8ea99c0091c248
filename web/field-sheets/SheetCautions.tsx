import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./Sheet.module.css";

/** What to be careful of while looking; stands at the head of every sheet. */
export const SheetCautions = () => (
  <section className={styles["cautions"]} aria-label="Cautions">
    <ul>
      <li>
        <b>Leave and locks.</b> Look only with the owner’s leave. Force no lock and no drawer, try no wrong
        key.
      </li>
      <li>
        <b>Lifting.</b> Empty it first. Two people, by the frame, never by top, arms or mouldings. Tall cases
        and loose marble fall.
      </li>
      <li>
        <b>Old finishes.</b> Paint may hold lead, greens and yellows arsenic, old mirrors mercury. Do not
        scrape, sand, wet or heat; wash your hands.
      </li>
      <li>
        <b>Nothing apart, no samples.</b> Unfastening, cleaning, solvents and samples are for a qualified
        conservator.
      </li>
      <li>
        <b>Protected species.</b> Ivory, tortoiseshell, some rosewoods: local law decides on moving, selling
        and sampling.
      </li>
    </ul>
    <p className="screen-only">
      <TextLink to="/method#cautions">More on cautions</TextLink>
    </p>
  </section>
);
