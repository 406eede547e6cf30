"use client";

// The same words as outside, drawn inside the shell so that the way to every other page stays open.
export { default } from "../error";
