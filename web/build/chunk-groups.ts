const ui = (...names: readonly string[]): RegExp => new RegExp(`/web/shared/ui/(${names.join("|")})\\.tsx?$`);

/**
 * How the client is cut into files, the first group that fits taking a module with all that it imports. Vendors in files
 * of their own stay cached when the client changes; a page is one file, and what several share stands in few files beside
 * it, since each costs a turn of the connection. What is left is cut by the bundler.
 */
export const CHUNK_GROUPS = [
  { name: "react", test: /node_modules\/(react|react-dom|scheduler)\// },
  {
    name: "apollo",
    test: /node_modules\/(@apollo|graphql|@graphql-typed-document-node|rxjs|@wry|optimism|tslib)\//,
  },
  { name: "cytoscape", test: /node_modules\/cytoscape\// },
  /** What the first script needs of the other packages: buttons, routes. */
  { name: "first", test: /node_modules/, tags: ["$initial" as const] },
  {
    name: "words",
    test: /\/(web\/shared\/(words|years|claims|navigation)|server\/domain)\//,
    minShareCount: 3,
  },
  { name: "links", test: ui("TextLink", "PageHeading", "ShowMore", "Waiting", "use-fetched", "say-failure") },
  { name: "unfolding", test: ui("Disclosure") },
  { name: "fields", test: ui("TextField", "SearchField", "RadioGroup") },
  { name: "offers", test: ui("Select", "ComboBox", "SuggestBox") },
  { name: "strips", test: /\/web\/strips\//, minShareCount: 2 },
  { name: "reading", test: /\/web\/evidence\//, minShareCount: 3 },
];
