import "./shared/look/fonts.css";
import "./shared/look/tokens.css";
import "./shared/look/base.css";
import { ApolloProvider } from "@apollo/client/react";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { makeClient } from "./shared/apollo/make-client.ts";
import { type Live, LiveProvider } from "./shared/live/live.ts";

let live: Promise<Live> | undefined;
/** One connection for all pages, fetched when the first wants it. */
const loadLive = (): Promise<Live> => {
  const address = `${window.location.origin.replace("http", "ws")}/graphql`;
  live ??= import("./shared/live/open-live.ts").then(({ openLive }) => openLive(address));
  return live;
};

const root = document.getElementById("root");
if (!root) throw new Error("index.html has no element #root");
createRoot(root).render(
  <StrictMode>
    <ApolloProvider client={makeClient()}>
      <LiveProvider value={loadLive}>
        <App />
      </LiveProvider>
    </ApolloProvider>
  </StrictMode>,
);
