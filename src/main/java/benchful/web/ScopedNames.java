package benchful.web;

import io.quarkus.qute.EngineConfiguration;
import io.quarkus.qute.EvalContext;
import io.quarkus.qute.Mapper;
import io.quarkus.qute.ResolutionContext;
import io.quarkus.qute.Results;
import io.quarkus.qute.ValueResolver;
import java.util.concurrent.CompletionStage;

/**
 * Finds what a name in a template stands for, scope by scope from the inside out. The engine would ask each of its resolvers,
 * one for every class that templates read, in every scope before it looked into the next.
 */
@EngineConfiguration
public class ScopedNames implements ValueResolver {
    @Override
    public int getPriority() {
        return Integer.MAX_VALUE;
    }

    @Override
    public boolean appliesTo(EvalContext context) {
        return context.getBase() instanceof Mapper && context.getBase() == context.resolutionContext().getData() && context.getParams().isEmpty();
    }

    @Override
    public CompletionStage<Object> resolve(EvalContext context) {
        String name = context.getName();
        for (ResolutionContext scope = context.resolutionContext(); scope != null && scope.getData() instanceof Mapper names; scope = scope.getParent()) {
            if (names.appliesTo(name)) {
                CompletionStage<Object> found = names.getAsync(name);
                if (!Results.isNotFound(found.toCompletableFuture().getNow(null))) {
                    return found;
                }
            }
        }
        return Results.notFound(context);
    }
}
