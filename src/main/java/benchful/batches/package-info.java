/**
 * Kit batches: kits made for sale, with no lesson. They are planned by the same machinery as a class, as a headcount
 * without steps, and say what one kit holds, what all take, and what a packed kit weighs for the post.
 */
package benchful.batches;
