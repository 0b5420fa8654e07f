package io.github.readfall.base;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a class whose fields change while it works, because it lives for one call: a search, a
 * counter, a reader of rows. It is made, used and dropped, by one thread at a time.
 *
 * <p>Every other class below the command line and the window has final fields only. Atomics and
 * locks are for classes in which threads really meet.
 */
@Documented
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
public @interface OneCall {}
