import type { Page } from "playwright-core";

/** Px by which the page is wider than the window, and what sticks out of it. */
export const sticksOut = (page: Page) =>
  page.evaluate(() => {
    const room = document.documentElement.clientWidth;
    const wide = [...document.body.querySelectorAll("*")].filter((element) => {
      const box = element.getBoundingClientRect();
      return box.width > 0 && box.right > room + 1 && getComputedStyle(element).position !== "fixed";
    });
    const scrollsInside = (element: Element): boolean => {
      for (
        let around = element.parentElement;
        around && around !== document.body;
        around = around.parentElement
      )
        if (/auto|scroll|hidden|clip/.test(getComputedStyle(around).overflowX)) return true;
      return false;
    };
    return {
      over: document.documentElement.scrollWidth - room,
      elements: wide
        .filter((element) => !scrollsInside(element))
        .map((element) => element.outerHTML.slice(0, 80)),
    };
  });

/** What it answers for a page that fits. */
export const NOTHING = { over: 0, elements: [] };
