import "./shared/look/fonts.css";
import "./shared/look/tokens.css";
import "./shared/look/base.css";
import { ApolloProvider } from "@apollo/client/react";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { makeClient } from "./shared/apollo/make-client.ts";

const root = document.getElementById("root");
if (!root) throw new Error("index.html has no element #root");
createRoot(root).render(
  <StrictMode>
    <ApolloProvider client={makeClient()}>
      <App />
    </ApolloProvider>
  </StrictMode>,
);
