/**
 * What classes teach the tutor: planned times against what really happened, step by step, in one class and over many.
 * A step is named as running over only beyond a margin, so that a minute here or there is not blamed.
 *
 * <p><b>The model by which minutes are learned</b> ({@link benchful.core.learning.StepPace}): a conjugate normal-inverse-gamma model
 * of each step's pace, on a logarithmic scale. A project says what one student needs; what a class needed for a step is seen. The
 * two are compared by way of the class's own simulation, which knows its headcount, level, sizes, tools, help and gaps, and so the
 * largest of n, the waves and the queue for help: with y the minutes seen, g those in which the simulated class waits before the
 * step and w those it is at work at the minutes as typed, the class went at
 * <pre>x = log((y - g) / w)</pre>
 * against the typed minutes (0 = as typed, 0.69 = twice as long), since every part of w grows with one student's minutes alike. The
 * x of a step's classes are taken as normal with a mean m, which belongs to the step, and a variance v, which says how unlike
 * classes are:
 * <pre>v ~ inverse gamma(a, b),   m | v ~ normal(0, v / k)</pre>
 * The prior's centre is what the tutor typed; k, a and b say how far typed minutes are usually off and how unlike classes usually are
 * ({@link benchful.core.learning.StepPace#PRIOR}). A class of long ago counts for less: its weight is halved every two years, which
 * raises its likelihood to a power and keeps the model conjugate. After classes with weights u and their weighted mean z
 * <pre>
 * k' = k + sum(u)    m' = (k 0 + sum(u) z) / k'    a' = a + sum(u) / 2
 * b' = b + sum(u (x - z)^2) / 2 + k sum(u) (z - 0)^2 / (2 k')
 * </pre>
 * A class of which more is known than when the step ended has the variance v / p instead, and counts p u for u in all but a'. Then
 * m has Student's t distribution with 2a' degrees of freedom about m', of spread sqrt(b' / (a' k')). The minutes proposed are the
 * typed ones times exp(m'). Source of the update: Hoff, A First Course in Bayesian Statistical Methods, 2009, section 5.3;
 * Gelman et al., Bayesian Data Analysis, 3rd ed., section 3.3 (from memory; a worked example of the former is a test).
 *
 * <p><b>Counts of who had finished when</b> ({@link benchful.core.learning.CountedPace}): with F the share of students who finish by a
 * moment in the simulated classes, waves and help included, a class at the pace x that had c[i] of n finished at the moments t[i], and
 * moved on at y when c had, has the likelihood of grouped and censored lifetimes
 * <pre>L(x) = product of (F(t[i] exp(-x)) - F(t[i-1] exp(-x)))^(c[i] - c[i-1])  F(around y exp(-x))  (1 - F(y exp(-x)))^(n - c)</pre>
 * of which the end alone is the one order statistic, and a step that nobody saw end is what is left without y. x is its mean with
 * equal weight for each x, s^2 its variance, and with s0^2 that of the end alone the class counts
 * <pre>p = (w^2 + s0^2) / (w^2 + s^2)</pre>
 * where w is by how much a class is quicker or slower as a whole. Source of the likelihood: Lawless, Statistical Models and Methods for
 * Lifetime Data, 2nd ed., 2003, section 2.4 on interval-censored data (from memory). It leaves out that students who share tools or the tutor finish
 * a little less independently than that; the test of coverage includes both.
 *
 * <p><b>How long a level takes</b> ({@link benchful.core.learning.LevelPace}): of each class of the level the mean, over the steps that
 * students do by themselves, of x less the weighted mean x of the same step in classes of those whose times were typed; with n of these,
 * the value has the precision n / (n + 1). The values go into a normal-inverse-gamma model of their own, with the typed factor as its
 * centre. What a level accounts for is taken off its x before the steps' minutes are learned, so that the two are not confounded; with
 * classes of one level only, all is put down to the steps. It leaves out that all classes of a level are held against the same others.
 *
 * <p><b>The model by which waste is learned</b> ({@link benchful.core.learning.WasteRate}): things spoil by chance and for themselves, so
 * that of n taken the number spoilt, y, is Poisson with the mean q n. The share q is gamma(shape a, rate b) with a / b = what the tutor
 * typed and b = the things that a usual class takes, so that typing counts like one class. After classes with weights u
 * <pre>a' = a + sum(u y)    b' = b + sum(u n)</pre>
 * and the number spoilt in the next class is negative binomial; what is proposed is enough for it with nine chances in ten. Source:
 * Gelman et al., Bayesian Data Analysis, 3rd ed., section 2.6 (from memory; its worked example of asthma deaths is a test). It leaves
 * out that one student may spoil many.
 *
 * <p><b>How often a student asks for help</b> ({@link benchful.core.learning.CallRate}): the simulation lets each student of a make step ask
 * after an exponential time of work, so the hands that go up in a class, y, are Poisson with the mean c e, where c is one student's calls in
 * an hour and e the hours that all students worked at the step without a hand up (who has finished, has left or is asking works not; the
 * calls of another level than that of the steps' times are multiplied by a factor of the level, and so are its hours). c is gamma(a, a / t)
 * with t the typed calls, so that typing counts like a calls seen. After classes with weights u
 * <pre>a' = a + sum(u y)    b' = a / t + sum(u e)</pre>
 * and a' / b' is proposed. Source: Gelman et al. as above, which has it with an exposure. A class in which nobody used the count of hands
 * tells nothing. It leaves out that one class asks more than another, and how long a call lasts: a hand that goes down says that somebody
 * was helped, but not since when.
 *
 * <p><b>How long breaks take</b> ({@link benchful.core.learning.BreakLength}): of all breaks that were planned for as many minutes d, and took y,
 * x = log(y / d) goes into a normal-inverse-gamma model as that of a step's pace does (same source), with the plan as its centre; two such
 * breaks of one class are seen as one, by their geometric mean. Breaks of another length tell nothing of it: a tea break is no lunch. It
 * leaves out that a break which is announced for longer is taken for longer.
 *
 * <p><b>How many of a tool are too few</b> ({@link benchful.core.learning.TooFew}) is a rule and no model: that students waited says that there
 * are to be more for each of them, not how many; so one more is tried.
 *
 * <p>What it leaves out: that one class is slow in all of its steps, so that the sum over steps is a little less sure than if
 * they were unlike each other; and steps whose ends overlap in a class that goes at its own pace, where the time from one end
 * to the next tells less of the step.
 */
@NullMarked
package benchful.core.learning;

import org.jspecify.annotations.NullMarked;
