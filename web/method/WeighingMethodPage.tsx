import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./MethodPage.module.css";
import text from "./WeighingMethodPage.module.css";
import type { Block, Table } from "./weighing/block.ts";
import { METHOD, METHOD_TITLE } from "./weighing/method-text.ts";

/** How probabilities come about: the model, every number that is assumed, and what cannot be known. */
export const WeighingMethodPage = () => (
  <article className={styles["page"]}>
    <header className={styles["head"]}>
      <PageHeading title={METHOD_TITLE}>{METHOD_TITLE}</PageHeading>
      <p>
        For those who want to follow a number to its end. How a finding is made, without any probability, is
        shown by examples on <TextLink to="/method">the page before this one</TextLink>.
      </p>
      <nav aria-label="On this page">
        <ul className={styles["contents"]}>
          {METHOD.map(({ id, title }) => (
            <li key={id}>
              <a href={`#${id}`}>{title}</a>
            </li>
          ))}
        </ul>
      </nav>
    </header>
    {METHOD.map(({ id, title, blocks }) => (
      <section key={id} id={id}>
        <h2>{title}</h2>
        <div className={styles["live"]}>
          {blocks.map((block) => (
            <BlockOfText key={keyOf(block)} block={block} />
          ))}
        </div>
      </section>
    ))}
  </article>
);

function keyOf(block: Block): string {
  if (typeof block === "string") return block;
  if ("formula" in block) return block.formula.join();
  return "list" in block ? block.list.join() : block.table.caption;
}

function BlockOfText({ block }: { block: Block }) {
  if (typeof block === "string") return <p>{block}</p>;
  if ("formula" in block) return <pre className={text["formula"]}>{block.formula.join("\n")}</pre>;
  if ("table" in block) return <TableOfText table={block.table} />;
  return (
    <ul className={styles["assumed"]}>
      {block.list.map((item) => (
        <li key={item}>{item}</li>
      ))}
    </ul>
  );
}

const TableOfText = ({ table: { caption, columns, rows } }: { table: Table }) => (
  <table className={text["table"]}>
    <caption>{caption}</caption>
    <thead>
      <tr>
        {columns.map((column) => (
          <th key={column} scope="col">
            {column}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {rows.map(([head, ...cells]) => (
        <tr key={head}>
          <th scope="row">{head}</th>
          {cells.map((cell, i) => (
            <td key={columns[i + 1]}>{cell}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);
