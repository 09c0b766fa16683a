package eavesproof.check.drools;

/** What a condition would call that wants to bring a session down. */
public final class Traps {
    private Traps() {}

    /** Never comes back. */
    @SuppressWarnings("InfiniteRecursion")
    public static int deep(int depth) {
        return deep(depth + 1) + 1;
    }

    /** Comes back too late. */
    public static int slow() throws InterruptedException {
        Thread.sleep(3_000);
        return 1;
    }
}
