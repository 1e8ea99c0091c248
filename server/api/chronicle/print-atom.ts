import type { Feed, FeedEntry } from "../../use-cases/chronicle/read-feed.ts";

/** A text as it stands in XML 1.0: signs that it cannot hold are left out, and those that mean something are written out. */
const escaped = (text: string): string =>
  text
    .toWellFormed()
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what XML 1.0 cannot hold
    .replaceAll(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");

const element = (name: string, text: string): string => `<${name}>${escaped(text)}</${name}>`;
const linkTo = (rel: string, href: string, type: string): string =>
  `<link rel="${rel}" type="${type}" href="${escaped(href)}"/>`;

/** A text that is never empty, as Atom wants names and titles to be of use. */
const orElse = (text: string, otherwise: string): string => (text.trim() === "" ? otherwise : text);

/** A feed as Atom (RFC 4287), in pages (RFC 5005); `origin` is the address of the house without a slash at its end. */
export function printAtom(feed: Feed, origin: string): string {
  const { region, page, newestPage, next } = feed;
  const address = `${origin}/feeds/${region?.id ?? "all"}.atom`;
  const on = (number: number): string => (number === newestPage ? address : `${address}?page=${number}`);
  const of = "application/atom+xml";
  const links = [
    linkTo("self", on(page), of),
    linkTo(
      "alternate",
      `${origin}${region === undefined ? "/house/history" : `/regions/${region.id}`}`,
      "text/html",
    ),
    linkTo("first", address, of),
    linkTo("last", on(0), of),
    ...(page < newestPage ? [linkTo("previous", on(page + 1), of)] : []),
    ...(next === undefined ? [] : [linkTo("next", on(next), of)]),
  ];
  return `${[
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">',
    element("id", feed.id),
    element("title", `Evidence accepted${region === undefined ? "" : `: ${region.label}`}`),
    element("updated", feed.updated),
    element("generator", "Scribeline"),
    ...links,
    ...feed.entries.map((entry) => printEntry(entry, origin)),
    "</feed>",
  ].join("\n")}\n`;
}

function printEntry({ id, revision, by, says, more }: FeedEntry, origin: string): string {
  const { number, at, message } = revision;
  const rest = more === 0 ? "" : `<p>And ${more} more.</p>`;
  const html = `<ul>${says.map((line) => `<li>${escaped(line)}</li>`).join("")}</ul>${rest}`;
  return [
    "<entry>",
    element("id", id),
    element("title", orElse(message, `Revision ${number}`)),
    element("updated", at),
    element("published", at),
    `<author>${element("name", orElse(by, "unknown"))}</author>`,
    linkTo("alternate", `${origin}/house/history?from=${number - 1}&to=${number}`, "text/html"),
    `<content type="html">${escaped(html)}</content>`,
    "</entry>",
  ].join("\n");
}
