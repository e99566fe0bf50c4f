package easewright.command;

/** One command: what may be written after its name, and what it does. */
interface Job {
    Grammar grammar();

    /**
     * Does it.
     *
     * @return the exit code
     * @throws Trouble if it cannot be done; nothing was written
     */
    int run(Given given, Voice voice) throws Trouble;
}
