"use client";

import { usePathname } from "next/navigation";
import { useEffect, useRef } from "react";

interface FollowPageProps {
  /** The id of what holds the page's content. */
  readonly contentId: string;
}

/**
 * After going to another page the keyboard starts at its content, not at the top of the shell again, unless
 * the page itself has put the focus somewhere.
 */
export function FollowPage({ contentId }: FollowPageProps) {
  const pathname = usePathname();
  const before = useRef(pathname);

  useEffect(() => {
    if (before.current === pathname) return;
    before.current = pathname;
    if (document.activeElement === document.body)
      document.getElementById(contentId)?.focus({ preventScroll: true });
  }, [pathname, contentId]);

  return null;
}
