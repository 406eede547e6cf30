"use client";

import type { ReactNode } from "react";
import { Dialog as AriaDialog, DialogTrigger, Heading, Modal, ModalOverlay } from "react-aria-components";
import { Button } from "./button";
import { useDensity } from "./density";

interface DialogProps {
  readonly title: string;
  /** The content; as a function it is given what closes the dialog. */
  readonly children: ReactNode | ((close: () => void) => ReactNode);
  /** What opens it: a Button. Leave out when `isOpen` is held outside. */
  readonly trigger?: ReactNode;
  readonly isOpen?: boolean;
  readonly onOpenChange?: (isOpen: boolean) => void;
  readonly size?: "ordinary" | "wide";
  /** For a question that must be answered: neither Escape's outside click nor a stray tap dismisses it. */
  readonly isAlert?: boolean;
}

/** A sheet laid over the page for one matter. Escape closes it and focus goes back to where it came from. */
export function Dialog(props: DialogProps) {
  const { trigger, isOpen, onOpenChange, ...paper } = props;
  const held = {
    ...(isOpen === undefined ? {} : { isOpen }),
    ...(onOpenChange === undefined ? {} : { onOpenChange }),
  };
  if (trigger === undefined) return <DialogPaper {...paper} {...held} />;
  return (
    <DialogTrigger {...held}>
      {trigger}
      <DialogPaper {...paper} />
    </DialogTrigger>
  );
}

function DialogPaper(props: Omit<DialogProps, "trigger">) {
  const { title, children, size = "ordinary", isAlert = false, ...held } = props;
  const density = useDensity();
  return (
    <ModalOverlay {...held} className="dialog-veil" isDismissable={!isAlert}>
      <Modal className="dialog-paper" data-size={size} data-density={density}>
        <AriaDialog className="dialog" role={isAlert ? "alertdialog" : "dialog"}>
          {({ close }) => (
            <>
              <div className="dialog-head">
                <Heading slot="title" level={2}>
                  {title}
                </Heading>
                <Button variant="plain" onPress={close}>
                  Close
                </Button>
              </div>
              {typeof children === "function" ? children(close) : children}
            </>
          )}
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
