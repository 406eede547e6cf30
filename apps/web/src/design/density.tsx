"use client";

import { createContext, type ReactNode, useContext } from "react";

type DensityOf = "desk" | "floor";

const DensityContext = createContext<DensityOf>("desk");

interface DensityProps {
  readonly of: DensityOf;
  readonly children: ReactNode;
}

/** Dense at the desk, generous on the floor: for what stands inside and for what opens from there. */
export function Density({ of, children }: DensityProps) {
  return (
    <DensityContext value={of}>
      <div data-density={of}>{children}</div>
    </DensityContext>
  );
}

/** The density of where we are. Dialogs and lists are drawn outside their page, and take it along by this. */
export function useDensity(): DensityOf {
  return useContext(DensityContext);
}
