import { ClosedLink } from "@/features/quotes/closed-link";

export default ClosedLink;
