<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES">
<context>
    <name>AccessPage</name>
    <message>
        <source>Who has access to %1</source>
        <translation>Quién tiene acceso a %1</translation>
    </message>
    <message>
        <source>Therapists</source>
        <translation>Terapeutas</translation>
    </message>
    <message>
        <source>A therapist sees the people assigned to them. Leads see everybody; auditors look at everybody. A change counts at once.</source>
        <translation>Cada terapeuta ve a las personas que tiene asignadas. Los responsables ven a todas; los auditores las miran todas. Un cambio vale al momento.</translation>
    </message>
    <message>
        <source>Looks after %1</source>
        <translation>Atiende a %1</translation>
    </message>
    <message>
        <source>Nobody is assigned: only leads see what this person sends.</source>
        <translation>No hay nadie asignado: solo los responsables ven lo que envía esta persona.</translation>
    </message>
    <message>
        <source>Phones</source>
        <translation>Teléfonos</translation>
    </message>
    <message>
        <source>None paired.</source>
        <translation>Ninguno vinculado.</translation>
    </message>
</context>
<context>
    <name>AccountForm</name>
    <message>
        <source>The account is signed out at once and cannot sign in until it is switched on again. What it has written stays.</source>
        <translation>La cuenta se cierra al momento y no puede entrar hasta que se active otra vez. Lo que ha escrito se queda.</translation>
    </message>
    <message>
        <source>The old password is no longer good, and the account is signed out. You get a first password to pass on.</source>
        <translation>La contraseña anterior ya no vale y la cuenta se cierra. Recibe usted una primera contraseña para darla.</translation>
    </message>
    <message>
        <source>The account is signed out and then signs in with its password alone, until it sets up a new second factor. Make sure that it is really them who asks.</source>
        <translation>La cuenta se cierra y después entra solo con su contraseña, hasta que configure otro segundo factor. Asegúrese de que de verdad es esa persona quien lo pide.</translation>
    </message>
    <message>
        <source>New account</source>
        <translation>Cuenta nueva</translation>
    </message>
    <message>
        <source>Account of %1</source>
        <translation>Cuenta de %1</translation>
    </message>
    <message>
        <source>First password: %1</source>
        <translation>Primera contraseña: %1</translation>
    </message>
    <message>
        <source>This is your own account. Nobody changes their own role here, so that somebody who may is always left; ask a colleague. Password and second factor are under My account.</source>
        <translation>Esta es su propia cuenta. Aquí nadie cambia su propio papel, para que siempre quede alguien que pueda; pídaselo a un colega. La contraseña y el segundo factor están en Mi cuenta.</translation>
    </message>
    <message>
        <source>User name</source>
        <translation>Nombre de usuario</translation>
    </message>
    <message>
        <source>User name of the account</source>
        <translation>Nombre de usuario de la cuenta</translation>
    </message>
    <message>
        <source>small letters, digits, dots: t.sample</source>
        <translation>minúsculas, cifras, puntos: t.muestra</translation>
    </message>
    <message>
        <source>Name that colleagues see</source>
        <translation>Nombre que ven los colegas</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Therapist: their own people. Lead: everybody&apos;s, and this page. Administrator: accounts, settings and phones, no records. Auditor: looks at everything, changes nothing.</source>
        <translation>Terapeuta: sus personas. Responsable: las de todos, y esta página. Administrador: cuentas, ajustes y teléfonos, sin fichas. Auditor: mira todo, no cambia nada.</translation>
    </message>
    <message>
        <source>Saving …</source>
        <translation>Guardando …</translation>
    </message>
    <message>
        <source>Make the account</source>
        <translation>Crear la cuenta</translation>
    </message>
    <message>
        <source>Save the account</source>
        <translation>Guardar la cuenta</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close the account</source>
        <translation>Cerrar la cuenta</translation>
    </message>
    <message>
        <source>Switch on</source>
        <translation>Activar</translation>
    </message>
    <message>
        <source>Switch the account on</source>
        <translation>Activar la cuenta</translation>
    </message>
    <message>
        <source>Switch off</source>
        <translation>Desactivar</translation>
    </message>
    <message>
        <source>Switch the account off</source>
        <translation>Desactivar la cuenta</translation>
    </message>
    <message>
        <source>New first password</source>
        <translation>Nueva primera contraseña</translation>
    </message>
    <message>
        <source>Take the second factor away</source>
        <translation>Quitar el segundo factor</translation>
    </message>
    <message>
        <source>Switch this account off?</source>
        <translation>¿Desactivar esta cuenta?</translation>
    </message>
    <message>
        <source>Make a new first password?</source>
        <translation>¿Crear una nueva primera contraseña?</translation>
    </message>
    <message>
        <source>Take the second factor away?</source>
        <translation>¿Quitar el segundo factor?</translation>
    </message>
    <message>
        <source>Yes, switch it off</source>
        <translation>Sí, desactivarla</translation>
    </message>
    <message>
        <source>Yes, make one</source>
        <translation>Sí, crearla</translation>
    </message>
    <message>
        <source>Yes, take it away</source>
        <translation>Sí, quitarlo</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>No, leave the account as it is</source>
        <translation>No, dejar la cuenta como está</translation>
    </message>
</context>
<context>
    <name>AccountRow</name>
    <message>
        <source>second factor in use</source>
        <translation>segundo factor en uso</translation>
    </message>
    <message>
        <source>no second factor</source>
        <translation>sin segundo factor</translation>
    </message>
    <message>
        <source>Account of %1</source>
        <translation>Cuenta de %1</translation>
    </message>
    <message>
        <source>%1, user name %2, %3, %4</source>
        <translation>%1, usuario %2, %3, %4</translation>
    </message>
    <message>
        <source>%1 (you)</source>
        <translation>%1 (usted)</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
</context>
<context>
    <name>AccountsPage</name>
    <message>
        <source>Accounts of this clinic</source>
        <translation>Cuentas de esta clínica</translation>
    </message>
    <message>
        <source>New account</source>
        <translation>Cuenta nueva</translation>
    </message>
    <message>
        <source>Find a person</source>
        <translation>Buscar una persona</translation>
    </message>
    <message>
        <source>Clinic settings</source>
        <translation>Ajustes de la clínica</translation>
    </message>
</context>
<context>
    <name>AdviceCards</name>
    <message>
        <source>Cards of advice</source>
        <translation>Fichas de consejos</translation>
    </message>
    <message>
        <source>Shown on the phone on the days chosen, and printed with the handout.</source>
        <translation>Se muestran en el teléfono los días elegidos y se imprimen con la hoja.</translation>
    </message>
    <message>
        <source>Card of advice</source>
        <translation>Ficha de consejos</translation>
    </message>
    <message>
        <source>Day, %1</source>
        <translation>Día, %1</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <source>Your note on the card %1</source>
        <translation>Su nota en la ficha %1</translation>
    </message>
    <message>
        <source>Your note to this person, may be empty</source>
        <translation>Su nota para esta persona, puede quedar vacía</translation>
    </message>
</context>
<context>
    <name>AttentionWords</name>
    <message>
        <source>A rule this desk does not know: %1.</source>
        <translation>Una regla que este puesto no conoce: %1.</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>Told of a fall, not hurt</source>
        <translation>Contó una caída, sin daño</translation>
    </message>
    <message>
        <source>Told of a fall, and was hurt</source>
        <translation>Contó una caída, con daño</translation>
    </message>
    <message>
        <source>Told of a fall, and hit the head</source>
        <translation>Contó una caída, con golpe en la cabeza</translation>
    </message>
    <message>
        <source>Told of a fall</source>
        <translation>Contó una caída</translation>
    </message>
    <message>
        <source>Skin hurt when the prosthesis came off: it stays off</source>
        <translation>Piel dañada al quitar la prótesis: se queda quitada</translation>
    </message>
    <message>
        <source>Skin red for too long after wearing</source>
        <translation>Piel roja demasiado tiempo después del uso</translation>
    </message>
    <message>
        <source>Skin: red marks that do not fade</source>
        <translation>Piel: marcas rojas que no se van</translation>
    </message>
    <message>
        <source>Skin: a blister, a cut, or wet</source>
        <translation>Piel: una ampolla, un corte o mojada</translation>
    </message>
    <message>
        <source>Skin: hot, very red or swollen, or it smells</source>
        <translation>Piel: caliente, muy roja o hinchada, o huele</translation>
    </message>
    <message>
        <source>The leg is swollen, hot or sore</source>
        <translation>La pierna está hinchada, caliente o dolorida</translation>
    </message>
    <message>
        <source>The foot has a sore or a new colour</source>
        <translation>El pie tiene una llaga o un color nuevo</translation>
    </message>
    <message>
        <source>Stopped because of the skin</source>
        <translation>Parado por la piel</translation>
    </message>
    <message>
        <source>Pain rising: %1 points over the last practices</source>
        <translation>Dolor en aumento: %1 puntos en las últimas prácticas</translation>
    </message>
    <message>
        <source> (%1 a week)</source>
        <translation> (%1 por semana)</translation>
    </message>
    <message>
        <source>, last rated today</source>
        <translation>, última valoración hoy</translation>
    </message>
    <message>
        <source>, last rated %1 ago</source>
        <translation>, última valoración hace %1</translation>
    </message>
    <message>
        <source>less than a minute</source>
        <translation>menos de un minuto</translation>
    </message>
    <message>
        <source>, no data yet for %1</source>
        <translation>, aún sin datos de %1</translation>
    </message>
    <message>
        <source>%1 Phone them.</source>
        <translation>%1 Llame por teléfono.</translation>
    </message>
    <message>
        <source>Hold order not arrived for %1. Phone them.</source>
        <translation>La orden de suspensión no ha llegado desde hace %1. Llame por teléfono.</translation>
    </message>
    <message>
        <source>On hold for %1, until you lift it</source>
        <translation>Suspendido desde hace %1, hasta que lo levante</translation>
    </message>
    <message>
        <source>Urgent message not seen for %1. Phone them.</source>
        <translation>Mensaje urgente sin ver desde hace %1. Llame por teléfono.</translation>
    </message>
    <message>
        <source>Message from them not read for %1</source>
        <translation>Mensaje suyo sin leer desde hace %1</translation>
    </message>
    <message>
        <source>%1 messages from them not read, the first for %2</source>
        <translation>%1 mensajes suyos sin leer, el primero desde hace %2</translation>
    </message>
    <message>
        <source>Your message not seen for %1</source>
        <translation>Su mensaje sin ver desde hace %1</translation>
    </message>
    <message>
        <source>%1 of your messages not seen, the first for %2</source>
        <translation>%1 de sus mensajes sin ver, el primero desde hace %2</translation>
    </message>
    <message>
        <source>%1, %2 ago. Ask how it happened.</source>
        <translation>%1, hace %2. Pregunte cómo pasó.</translation>
    </message>
    <message>
        <source>%1, %2 ago</source>
        <translation>%1, hace %2</translation>
    </message>
    <message>
        <source>Phone not heard from for %1. Call them.</source>
        <translation>Sin contacto con el teléfono desde hace %1. Llame.</translation>
    </message>
    <message>
        <source>Phone not heard from for %1</source>
        <translation>Sin contacto con el teléfono desde hace %1</translation>
    </message>
    <message>
        <source>Paired, but the phone was never heard from</source>
        <translation>Vinculado, pero nunca hubo contacto con el teléfono</translation>
    </message>
    <message>
        <source>No phone paired</source>
        <translation>Ningún teléfono vinculado</translation>
    </message>
    <message>
        <source>Programme %1 not arrived for %2</source>
        <translation>El programa %1 no ha llegado desde hace %2</translation>
    </message>
    <message>
        <source>Programme ended %1 ago</source>
        <translation>El programa terminó hace %1</translation>
    </message>
    <message>
        <source>Programme ends today</source>
        <translation>El programa termina hoy</translation>
    </message>
    <message>
        <source>Programme ends in %1</source>
        <translation>El programa termina en %1</translation>
    </message>
    <message>
        <source>No programme yet</source>
        <translation>Aún sin programa</translation>
    </message>
    <message>
        <source>Doing less than agreed: %1 of %2 due in three weeks</source>
        <translation>Hace menos de lo acordado: %1 de %2 previstas en tres semanas</translation>
    </message>
    <message>
        <source>Nothing done for %1, and %2 due since</source>
        <translation>Nada hecho desde hace %1, y %2 previstas desde entonces</translation>
    </message>
    <message>
        <source>Nothing done yet: %1 were due in three weeks</source>
        <translation>Nada hecho aún: %1 previstas en tres semanas</translation>
    </message>
    <message>
        <source>Ready to progress: 1 exercise, by its rule on effort and pain</source>
        <translation>Listo para progresar: 1 ejercicio, por su regla de esfuerzo y dolor</translation>
    </message>
    <message>
        <source>Ready to progress: %1 exercises, by their rules on effort and pain</source>
        <translation>Listo para progresar: %1 ejercicios, por sus reglas de esfuerzo y dolor</translation>
    </message>
    <message>
        <source>Too hard by its rule: 1 exercise</source>
        <translation>Demasiado duro por su regla: 1 ejercicio</translation>
    </message>
    <message>
        <source>Too hard by their rules: %1 exercises</source>
        <translation>Demasiado duros por sus reglas: %1 ejercicios</translation>
    </message>
    <message>
        <source>A measure is due today</source>
        <translation>Hoy toca una medida</translation>
    </message>
    <message>
        <source>A measure has been due for %1</source>
        <translation>Hay una medida pendiente desde hace %1</translation>
    </message>
    <message>
        <source>Done %1 of %2 due</source>
        <translation>Hechas %1 de %2 previstas</translation>
    </message>
    <message>
        <source>All done: %1 of %2 due</source>
        <translation>Todo hecho: %1 de %2 previstas</translation>
    </message>
    <message>
        <source>Nothing was due yet</source>
        <translation>Aún no había nada previsto</translation>
    </message>
    <message>
        <source>No data yet for %1 due</source>
        <translation>Aún sin datos de %1 previstas</translation>
    </message>
    <message>
        <source>Done %1 of %2 due, no data yet for %3</source>
        <translation>Hechas %1 de %2 previstas, aún sin datos de %3</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <source>All well</source>
        <translation>Todo bien</translation>
    </message>
    <message>
        <source>never heard from</source>
        <translation>nunca hubo contacto</translation>
    </message>
</context>
<context>
    <name>AuditLine</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
</context>
<context>
    <name>AuditPage</name>
    <message>
        <source>Audit trail</source>
        <translation>Registro de auditoría</translation>
    </message>
    <message>
        <source>Audit trail: %1</source>
        <translation>Registro de auditoría: %1</translation>
    </message>
    <message>
        <source>By or about which account</source>
        <translation>De o sobre qué cuenta</translation>
    </message>
    <message>
        <source>name or user name; empty: all</source>
        <translation>nombre o usuario; vacío: todas</translation>
    </message>
    <message>
        <source>From day</source>
        <translation>Desde el día</translation>
    </message>
    <message>
        <source>2026-11-25</source>
        <translation>2026-11-25</translation>
    </message>
    <message>
        <source>To day</source>
        <translation>Hasta el día</translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Leyendo …</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>Look at these lines</source>
        <translation>Mirar estas líneas</translation>
    </message>
    <message>
        <source>About everybody</source>
        <translation>Sobre todas las personas</translation>
    </message>
    <message>
        <source>Check the chain</source>
        <translation>Comprobar la cadena</translation>
    </message>
    <message>
        <source>The trail was changed</source>
        <translation>El registro fue cambiado</translation>
    </message>
    <message>
        <source>Nothing was changed</source>
        <translation>Nada fue cambiado</translation>
    </message>
    <message>
        <source>Nothing in the newest part. Look further back.</source>
        <translation>Nada en la parte más nueva. Mire más atrás.</translation>
    </message>
    <message>
        <source>There are no such lines.</source>
        <translation>No hay líneas así.</translation>
    </message>
    <message>
        <source>Further back</source>
        <translation>Más atrás</translation>
    </message>
</context>
<context>
    <name>AuditWords</name>
    <message>
        <source>made an account</source>
        <translation>creó una cuenta</translation>
    </message>
    <message>
        <source>changed an account</source>
        <translation>cambió una cuenta</translation>
    </message>
    <message>
        <source>began to set up a second factor</source>
        <translation>empezó a configurar un segundo factor</translation>
    </message>
    <message>
        <source>set up a second factor</source>
        <translation>configuró un segundo factor</translation>
    </message>
    <message>
        <source>took a second factor away</source>
        <translation>quitó un segundo factor</translation>
    </message>
    <message>
        <source>made a new first password</source>
        <translation>creó una nueva primera contraseña</translation>
    </message>
    <message>
        <source>switched an account off</source>
        <translation>desactivó una cuenta</translation>
    </message>
    <message>
        <source>changed the own password</source>
        <translation>cambió su contraseña</translation>
    </message>
    <message>
        <source>was refused: wrong password or code</source>
        <translation>fue rechazado: contraseña o código erróneo</translation>
    </message>
    <message>
        <source>signed in</source>
        <translation>entró</translation>
    </message>
    <message>
        <source>signed out or locked the desk</source>
        <translation>salió o bloqueó el puesto</translation>
    </message>
    <message>
        <source>was refused: too many tries</source>
        <translation>fue rechazado: demasiados intentos</translation>
    </message>
    <message>
        <source>looked at the accounts</source>
        <translation>miró las cuentas</translation>
    </message>
    <message>
        <source>looked at this trail</source>
        <translation>miró este registro</translation>
    </message>
    <message>
        <source>looked at the caseload</source>
        <translation>miró la lista de personas</translation>
    </message>
    <message>
        <source>the clinic was set up</source>
        <translation>se creó la clínica</translation>
    </message>
    <message>
        <source>was refused</source>
        <translation>fue rechazado</translation>
    </message>
    <message>
        <source>took a phone&apos;s access away</source>
        <translation>quitó el acceso a un teléfono</translation>
    </message>
    <message>
        <source>looked at the phones</source>
        <translation>miró los teléfonos</translation>
    </message>
    <message>
        <source>wrote an exercise of the clinic</source>
        <translation>escribió un ejercicio de la clínica</translation>
    </message>
    <message>
        <source>wrote a template of the clinic</source>
        <translation>escribió una plantilla de la clínica</translation>
    </message>
    <message>
        <source>withdrew a template of the clinic</source>
        <translation>retiró una plantilla de la clínica</translation>
    </message>
    <message>
        <source>sent a hold order</source>
        <translation>envió una orden de suspensión</translation>
    </message>
    <message>
        <source>lifted a hold order</source>
        <translation>levantó una orden de suspensión</translation>
    </message>
    <message>
        <source>looked at the hold orders</source>
        <translation>miró las órdenes de suspensión</translation>
    </message>
    <message>
        <source>sent a message</source>
        <translation>envió un mensaje</translation>
    </message>
    <message>
        <source>read the messages</source>
        <translation>leyó los mensajes</translation>
    </message>
    <message>
        <source>a phone&apos;s record was refused</source>
        <translation>se rechazó un dato de un teléfono</translation>
    </message>
    <message>
        <source>a phone was paired</source>
        <translation>se vinculó un teléfono</translation>
    </message>
    <message>
        <source>made a pairing code</source>
        <translation>creó un código de vinculación</translation>
    </message>
    <message>
        <source>a pairing code was refused</source>
        <translation>se rechazó un código de vinculación</translation>
    </message>
    <message>
        <source>pairing was refused: too many tries</source>
        <translation>se rechazó la vinculación: demasiados intentos</translation>
    </message>
    <message>
        <source>added a person</source>
        <translation>añadió a una persona</translation>
    </message>
    <message>
        <source>said that the person can wait</source>
        <translation>dijo que la persona puede esperar</translation>
    </message>
    <message>
        <source>ended that the person can wait</source>
        <translation>terminó la espera de la persona</translation>
    </message>
    <message>
        <source>assigned the person</source>
        <translation>asignó a la persona</translation>
    </message>
    <message>
        <source>opened the record by a written reason</source>
        <translation>abrió la ficha con un motivo escrito</translation>
    </message>
    <message>
        <source>changed the record</source>
        <translation>cambió la ficha</translation>
    </message>
    <message>
        <source>the person was erased</source>
        <translation>se borró a la persona</translation>
    </message>
    <message>
        <source>looked for a person by name</source>
        <translation>buscó a una persona por su nombre</translation>
    </message>
    <message>
        <source>looked at the record</source>
        <translation>miró la ficha</translation>
    </message>
    <message>
        <source>ended an assignment of the person</source>
        <translation>terminó una asignación de la persona</translation>
    </message>
    <message>
        <source>a phone was refused</source>
        <translation>se rechazó un teléfono</translation>
    </message>
    <message>
        <source>looked at what was done</source>
        <translation>miró lo que se hizo</translation>
    </message>
    <message>
        <source>a programme was refused by the rules</source>
        <translation>las reglas rechazaron un programa</translation>
    </message>
    <message>
        <source>signed a programme</source>
        <translation>firmó un programa</translation>
    </message>
    <message>
        <source>looked at the programmes</source>
        <translation>miró los programas</translation>
    </message>
    <message>
        <source>looked at what has arrived</source>
        <translation>miró lo que ha llegado</translation>
    </message>
    <message>
        <source>changed the clinic&apos;s settings</source>
        <translation>cambió los ajustes de la clínica</translation>
    </message>
    <message>
        <source>a backup was made and checked</source>
        <translation>se hizo y comprobó una copia de seguridad</translation>
    </message>
    <message>
        <source>the store was put back from a copy</source>
        <translation>se restauraron los datos desde una copia</translation>
    </message>
    <message>
        <source>the person is not theirs</source>
        <translation>la persona no es suya</translation>
    </message>
    <message>
        <source>not with this role</source>
        <translation>no con este papel</translation>
    </message>
    <message>
        <source>not signed in</source>
        <translation>sin entrar</translation>
    </message>
    <message>
        <source>password or second factor still to be set</source>
        <translation>contraseña o segundo factor aún por configurar</translation>
    </message>
    <message>
        <source>wrong code</source>
        <translation>código erróneo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>took a document of the record out of the desk</source>
        <translation>sacó un documento de la ficha</translation>
    </message>
</context>
<context>
    <name>CaseRow</name>
    <message>
        <source>Open %1</source>
        <translation>Abrir %1</translation>
    </message>
    <message>
        <source>%1. %2: %3 %4. %5 Phone heard from: %6. %7</source>
        <translation>%1. %2: %3 %4. %5 Contacto con el teléfono: %6. %7</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No longer</source>
        <translation>Ya no</translation>
    </message>
    <message>
        <source>Can wait</source>
        <translation>Puede esperar</translation>
    </message>
    <message>
        <source>%1: end the waiting</source>
        <translation>%1: terminar la espera</translation>
    </message>
    <message>
        <source>%1: this can wait</source>
        <translation>%1: esto puede esperar</translation>
    </message>
    <message>
        <source>Choose %1</source>
        <translation>Elegir a %1</translation>
    </message>
</context>
<context>
    <name>CaseloadPage</name>
    <message>
        <source>Who needs you today</source>
        <translation>Quién le necesita hoy</translation>
    </message>
    <message>
        <source>Reading … %L1 so far</source>
        <translation>Leyendo … %L1 hasta ahora</translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Leyendo …</translation>
    </message>
    <message>
        <source>Find a person</source>
        <translation>Buscar una persona</translation>
    </message>
    <message>
        <source>Find by name, side, level or words</source>
        <translation>Buscar: nombre, lado, nivel …</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Leer de nuevo</translation>
    </message>
    <message>
        <source>New person</source>
        <translation>Persona nueva</translation>
    </message>
    <message>
        <source>Not in this list?</source>
        <translation>¿No está en la lista?</translation>
    </message>
    <message>
        <source>Find a person who is not in this list</source>
        <translation>Buscar a una persona que no está en la lista</translation>
    </message>
    <message>
        <source>Our exercises</source>
        <translation>Nuestros ejercicios</translation>
    </message>
    <message>
        <source>Exercises that this clinic wrote</source>
        <translation>Ejercicios que escribió esta clínica</translation>
    </message>
    <message>
        <source>Clinic settings</source>
        <translation>Ajustes de la clínica</translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Cuentas</translation>
    </message>
    <message>
        <source>Audit trail</source>
        <translation>Registro de auditoría</translation>
    </message>
    <message>
        <source>Everybody&apos;s</source>
        <translation>Las de todos</translation>
    </message>
    <message>
        <source>Whose people</source>
        <translation>Personas de quién</translation>
    </message>
    <message>
        <source>Mine</source>
        <translation>Las mías</translation>
    </message>
    <message>
        <source>How urgent</source>
        <translation>Urgencia</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Sort again</source>
        <translation>Ordenar de nuevo</translation>
    </message>
    <message>
        <source>Done, by week</source>
        <translation>Hecho, por semana</translation>
    </message>
    <message>
        <source>Heard from</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>People, most urgent first</source>
        <translation>Personas, lo más urgente primero</translation>
    </message>
    <message>
        <source>Nobody fits these words.</source>
        <translation>Nadie encaja con estas palabras.</translation>
    </message>
    <message>
        <source>Nobody fits this choice.</source>
        <translation>Nadie encaja con esta elección.</translation>
    </message>
    <message>
        <source>Nobody is assigned to you.</source>
        <translation>No tiene a nadie asignado.</translation>
    </message>
    <message>
        <source>Nobody here yet. Press New person to begin.</source>
        <translation>Aún no hay nadie. Pulse Persona nueva para empezar.</translation>
    </message>
    <message>
        <source>Choose several</source>
        <translation>Elegir a varios</translation>
    </message>
    <message>
        <source>Choose several people, to write to all of them</source>
        <translation>Elegir a varias personas, para escribir a todas</translation>
    </message>
    <message>
        <source>Space on a row chooses it</source>
        <translation>La barra espaciadora elige la fila</translation>
    </message>
    <message>
        <source>1 chosen</source>
        <translation>1 elegida</translation>
    </message>
    <message>
        <source>%L1 chosen</source>
        <translation>%L1 elegidas</translation>
    </message>
    <message>
        <source>Write to them</source>
        <translation>Escribirles</translation>
    </message>
    <message>
        <source>Hold order for them</source>
        <translation>Orden de suspensión para ellas</translation>
    </message>
    <message>
        <source>All that are shown (%L1)</source>
        <translation>Todas las que se muestran (%L1)</translation>
    </message>
    <message>
        <source>Choose all that are shown</source>
        <translation>Elegir todas las que se muestran</translation>
    </message>
    <message>
        <source>Ctrl and A</source>
        <translation>Ctrl y A</translation>
    </message>
    <message>
        <source>Choose nobody</source>
        <translation>No elegir a nadie</translation>
    </message>
</context>
<context>
    <name>CaseloadRows</name>
    <message>
        <source>Safety</source>
        <translation>Seguridad</translation>
    </message>
    <message>
        <source>Pain and skin</source>
        <translation>Dolor y piel</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Mensajes</translation>
    </message>
    <message>
        <source>No contact</source>
        <translation>Sin contacto</translation>
    </message>
    <message>
        <source>Doing less</source>
        <translation>Hace menos</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Paso siguiente</translation>
    </message>
    <message>
        <source>Programme</source>
        <translation>Programa</translation>
    </message>
</context>
<context>
    <name>CataloguePicker</name>
    <message>
        <source>Pick an exercise</source>
        <translation>Elija un ejercicio</translation>
    </message>
    <message>
        <source>Find an exercise</source>
        <translation>Buscar un ejercicio</translation>
    </message>
    <message>
        <source>Find by words: stairs, lying, strength, chair …</source>
        <translation>Buscar por palabras: escaleras, tumbado, fuerza, silla …</translation>
    </message>
    <message>
        <source>No exercise fits these words.</source>
        <translation>Ningún ejercicio encaja con estas palabras.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir %1</translation>
    </message>
</context>
<context>
    <name>ClinicSettingsPage</name>
    <message>
        <source>Clinic settings</source>
        <translation>Ajustes de la clínica</translation>
    </message>
    <message>
        <source>They count for everyone of this clinic. The usual value is the cautious end of what is published.</source>
        <translation>Valen para toda la clínica. El valor habitual es el extremo prudente de lo publicado.</translation>
    </message>
    <message>
        <source>A lead or an administrator of the clinic changes these.</source>
        <translation>Los cambia un responsable o un administrador de la clínica.</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>From %1 to %2, usually %3. %4</source>
        <translation>De %1 a %2, habitual %3. %4</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Saving …</source>
        <translation>Guardando …</translation>
    </message>
    <message>
        <source>Save for the clinic</source>
        <translation>Guardar para la clínica</translation>
    </message>
    <message>
        <source>Usual values</source>
        <translation>Valores habituales</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Copia de seguridad</translation>
    </message>
    <message>
        <source>What the clinic has set</source>
        <translation>Lo que la clínica ha fijado</translation>
    </message>
</context>
<context>
    <name>ClipView</name>
    <message>
        <source>Stop the clip</source>
        <translation>Parar el vídeo</translation>
    </message>
    <message>
        <source>Play the clip</source>
        <translation>Ver el vídeo</translation>
    </message>
    <message>
        <source>This device cannot play the clip. What it shows is written here.</source>
        <translation>Este aparato no puede mostrar el vídeo. Aquí está escrito lo que muestra.</translation>
    </message>
    <message>
        <source>The clip shows: %1</source>
        <translation>El vídeo muestra: %1</translation>
    </message>
    <message>
        <source>What is said: %1</source>
        <translation>Lo que se dice: %1</translation>
    </message>
</context>
<context>
    <name>DeskHead</name>
    <message>
        <source>Back to %1</source>
        <translation>Volver a %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Newel Desk</source>
        <translation>Newel Desk</translation>
    </message>
    <message>
        <source>%1 …</source>
        <translation>%1 …</translation>
    </message>
    <message>
        <source>Text %1 %</source>
        <translation>Texto %1 %</translation>
    </message>
    <message>
        <source>Text size, now %1 percent</source>
        <translation>Tamaño del texto, ahora %1 por ciento</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Light colours</source>
        <translation>Colores claros</translation>
    </message>
    <message>
        <source>Dark colours</source>
        <translation>Colores oscuros</translation>
    </message>
    <message>
        <source>My account</source>
        <translation>Mi cuenta</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>Lock this desk</source>
        <translation>Bloquear este puesto</translation>
    </message>
    <message>
        <source>Ctrl and L</source>
        <translation>Ctrl y L</translation>
    </message>
    <message>
        <source>Sign out</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonar</translation>
    </message>
    <message>
        <source>Give up: %1</source>
        <translation>Abandonar: %1</translation>
    </message>
</context>
<context>
    <name>DocumentsPage</name>
    <message>
        <source>Documents of %1</source>
        <translation>Documentos de %1</translation>
    </message>
    <message>
        <source>Which document</source>
        <translation>Qué documento</translation>
    </message>
    <message>
        <source>Layout</source>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>From day</source>
        <translation>Desde el día</translation>
    </message>
    <message>
        <source>2026-11-25</source>
        <translation>2026-11-25</translation>
    </message>
    <message>
        <source>To day</source>
        <translation>Hasta el día</translation>
    </message>
    <message>
        <source>Also</source>
        <translation>También</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Carpeta</translation>
    </message>
    <message>
        <source>Folder that the document goes into</source>
        <translation>Carpeta a la que va el documento</translation>
    </message>
    <message>
        <source>Choose a folder …</source>
        <translation>Elegir una carpeta …</translation>
    </message>
    <message>
        <source>Make and save</source>
        <translation>Hacer y guardar</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonar</translation>
    </message>
    <message>
        <source>Give up making this document</source>
        <translation>Abandonar este documento</translation>
    </message>
    <message>
        <source>You can go on with something else meanwhile.</source>
        <translation>Mientras tanto puede seguir con otra cosa.</translation>
    </message>
    <message>
        <source>Saved just now</source>
        <translation>Guardados ahora</translation>
    </message>
    <message>
        <source>Each document is written into the clinic&apos;s audit trail before it is there.</source>
        <translation>Cada documento se escribe en el registro de auditoría de la clínica antes de existir.</translation>
    </message>
</context>
<context>
    <name>DoneGrid</name>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>part done</source>
        <translation>hecho en parte</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>excused</source>
        <translation>excusado</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>sin datos</translation>
    </message>
</context>
<context>
    <name>DonePage</name>
    <message>
        <source>What %1 did</source>
        <translation>Lo que hizo %1</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semanas</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Por semana</translation>
    </message>
    <message>
        <source>By programme</source>
        <translation>Por programa</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Aún nada.</translation>
    </message>
    <message>
        <source>Wearing time, newest first</source>
        <translation>Tiempo de uso, lo más nuevo primero</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No practice reported in these weeks</source>
        <translation>Ninguna práctica comunicada en estas semanas</translation>
    </message>
    <message>
        <source>1 practice</source>
        <translation>1 práctica</translation>
    </message>
    <message>
        <source>%1 practices, newest first</source>
        <translation>%1 prácticas, la más nueva primero</translation>
    </message>
    <message>
        <source>Report of these weeks</source>
        <translation>Informe de estas semanas</translation>
    </message>
    <message>
        <source>Notes about days</source>
        <translation>Notas sobre días</translation>
    </message>
</context>
<context>
    <name>DoseFields</name>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Hold seconds</source>
        <translation>Segundos de mantener</translation>
    </message>
    <message>
        <source>Seconds out</source>
        <translation>Segundos de ida</translation>
    </message>
    <message>
        <source>Seconds back</source>
        <translation>Segundos de vuelta</translation>
    </message>
    <message>
        <source>Seconds between</source>
        <translation>Segundos entre medias</translation>
    </message>
    <message>
        <source>Rest between sets</source>
        <translation>Descanso entre series</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Times in a row</source>
        <translation>Veces seguidas</translation>
    </message>
    <message>
        <source>Rest between</source>
        <translation>Descanso entre medias</translation>
    </message>
    <message>
        <source>Times there and back</source>
        <translation>Veces ida y vuelta</translation>
    </message>
    <message>
        <source>Metres one way</source>
        <translation>Metros de ida</translation>
    </message>
    <message>
        <source>Steps one way</source>
        <translation>Peldaños de ida</translation>
    </message>
    <message>
        <source>Seconds a step</source>
        <translation>Segundos por paso</translation>
    </message>
</context>
<context>
    <name>DraftList</name>
    <message>
        <source>Programme %1, %2</source>
        <translation>Programa %1, %2</translation>
    </message>
    <message>
        <source>%1 · draft, %2</source>
        <translation>%1 · borrador, %2</translation>
    </message>
    <message>
        <source>Not taken: %1. %2</source>
        <translation>No se toma: %1. %2</translation>
    </message>
    <message>
        <source>No exercise yet. Start from a template, or pick one from the catalogue.</source>
        <translation>Aún sin ejercicios. Empiece desde una plantilla o elija uno del catálogo.</translation>
    </message>
    <message>
        <source>Add exercise</source>
        <translation>Añadir ejercicio</translation>
    </message>
    <message>
        <source>What suits</source>
        <translation>Lo adecuado</translation>
    </message>
    <message>
        <source>What suits this person</source>
        <translation>Lo adecuado para esta persona</translation>
    </message>
    <message>
        <source>Dates, advice, limits</source>
        <translation>Fechas, consejos, límites</translation>
    </message>
    <message>
        <source>Wearing time, measures</source>
        <translation>Tiempo de uso, medidas</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Start from …</source>
        <translation>Empezar desde …</translation>
    </message>
    <message>
        <source>Minutes a day: %1</source>
        <translation>Minutos al día: %1</translation>
    </message>
    <message>
        <source>whole programme</source>
        <translation>todo el programa</translation>
    </message>
    <message>
        <source>Review and sign</source>
        <translation>Revisar y firmar</translation>
    </message>
    <message>
        <source>In the way of signing: %1</source>
        <translation>Lo que impide firmar: %1</translation>
    </message>
    <message>
        <source>Against the last programme: %1</source>
        <translation>Respecto al último programa: %1</translation>
    </message>
</context>
<context>
    <name>EntryDays</name>
    <message>
        <source>On these days</source>
        <translation>En estos días</translation>
    </message>
    <message>
        <source>Times a week, any days</source>
        <translation>Veces por semana, cualquier día</translation>
    </message>
    <message>
        <source>Same days for all</source>
        <translation>Los mismos días para todos</translation>
    </message>
    <message>
        <source>Days and times of %1 for all exercises</source>
        <translation>Días y horas de %1 para todos los ejercicios</translation>
    </message>
    <message>
        <source>Day, %1</source>
        <translation>Día, %1</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <source>Times a week</source>
        <translation>Veces por semana</translation>
    </message>
    <message>
        <source>Times a week, %1</source>
        <translation>Veces por semana, %1</translation>
    </message>
    <message>
        <source>Time of day, %1</source>
        <translation>Hora del día, %1</translation>
    </message>
    <message>
        <source>From, time %1, %2</source>
        <translation>Desde, hora %1, %2</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>To, time %1, %2</source>
        <translation>Hasta, hora %1, %2</translation>
    </message>
    <message>
        <source>Set times</source>
        <translation>Fijar horas</translation>
    </message>
    <message>
        <source>Set time %1, %2</source>
        <translation>Fijar hora %1, %2</translation>
    </message>
</context>
<context>
    <name>EntryEditor</name>
    <message>
        <source>Up</source>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Mover hacia arriba</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bajar</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Mover hacia abajo</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Support</source>
        <translation>Apoyo</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Lados</translation>
    </message>
    <message>
        <source>Prosthesis</source>
        <translation>Prótesis</translation>
    </message>
    <message>
        <source>Note to the person</source>
        <translation>Nota para la persona</translation>
    </message>
    <message>
        <source>Shown and printed with this exercise</source>
        <translation>Se muestra y se imprime con este ejercicio</translation>
    </message>
    <message>
        <source>Pace</source>
        <translation>Ritmo</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>con tiempo</translation>
    </message>
    <message>
        <source>each move waits for a tap</source>
        <translation>cada movimiento espera un toque</translation>
    </message>
    <message>
        <source>Own limits for pain</source>
        <translation>Límites propios de dolor</translation>
    </message>
</context>
<context>
    <name>EntryMedia</name>
    <message>
        <source>The photo and the clip are still coming. You can practise without them.</source>
        <translation>La foto y el vídeo aún están en camino. Puede practicar sin ellos.</translation>
    </message>
    <message>
        <source>The photo is still coming. You can practise without it.</source>
        <translation>La foto aún está en camino. Puede practicar sin ella.</translation>
    </message>
    <message>
        <source>The clip is still coming. You can practise without it.</source>
        <translation>El vídeo aún está en camino. Puede practicar sin él.</translation>
    </message>
    <message>
        <source>The photo shows: %1</source>
        <translation>La foto muestra: %1</translation>
    </message>
</context>
<context>
    <name>EntryRow</name>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>Editar %1</translation>
    </message>
    <message>
        <source>%1 (changed)</source>
        <translation>%1 (cambiado)</translation>
    </message>
</context>
<context>
    <name>EvidenceWords</name>
    <message>
        <source>{good} good practices in a row, {needed} needed</source>
        <translation>{good} prácticas buenas seguidas, hacen falta {needed}</translation>
    </message>
    <message>
        <source>No practice under this dose yet</source>
        <translation>Aún ninguna práctica con esta dosis</translation>
    </message>
    <message>
        <source>{day}: missed, the row begins anew</source>
        <translation>{day}: faltó, la serie empieza de nuevo</translation>
    </message>
    <message>
        <source>{day}: not heard of yet</source>
        <translation>{day}: aún no se sabe</translation>
    </message>
    <message>
        <source>{day}: ended by a red flag</source>
        <translation>{day}: la terminó una señal de alarma</translation>
    </message>
    <message>
        <source>{day}: told later, not timed by the phone</source>
        <translation>{day}: contada después, no medida por el teléfono</translation>
    </message>
    <message>
        <source>{day}: stopped or skipped</source>
        <translation>{day}: parada u omitida</translation>
    </message>
    <message>
        <source>{day}: {done} of {asked} sets</source>
        <translation>{day}: {done} de {asked} series</translation>
    </message>
    <message>
        <source>{day}: {done} in the last set; goal {goal} and {over} over</source>
        <translation>{day}: {done} en la última serie; meta {goal} y {over} de más</translation>
    </message>
    <message>
        <source>{day}: the rule wants {goal}, the phone leads through {asked}</source>
        <translation>{day}: la regla pide {goal}, el teléfono guía {asked}</translation>
    </message>
    <message>
        <source>{day}: {done} of {asked} done</source>
        <translation>{day}: hecho {done} de {asked}</translation>
    </message>
    <message>
        <source>{day}: effort {effort}, limit {limit}</source>
        <translation>{day}: esfuerzo {effort}, límite {limit}</translation>
    </message>
    <message>
        <source>{day}: effort not rated</source>
        <translation>{day}: esfuerzo sin valorar</translation>
    </message>
    <message>
        <source>{day}: pain {before} before, {after} after; may rise by {limit}</source>
        <translation>{day}: dolor {before} antes, {after} después; puede subir {limit}</translation>
    </message>
    <message>
        <source>{day}: pain not rated before and after</source>
        <translation>{day}: dolor sin valorar antes y después</translation>
    </message>
    <message>
        <source>{day}: pain {before} before, {after} after; a rise of {limit} is too hard</source>
        <translation>{day}: dolor {before} antes, {after} después; una subida de {limit} es demasiado</translation>
    </message>
    <message>
        <source>{day}: {percent} % of the dose done, under {limit} % is too hard</source>
        <translation>{day}: hecho el {percent} % de la dosis, menos del {limit} % es demasiado duro</translation>
    </message>
    <message>
        <source>Stated by the clinic</source>
        <translation>Lo dice la clínica</translation>
    </message>
    <message>
        <source>True of every programme here</source>
        <translation>Vale para todos los programas de aquí</translation>
    </message>
    <message>
        <source>{exercise}: equipment stated</source>
        <translation>{exercise}: material indicado</translation>
    </message>
    <message>
        <source>{exercise}: needs none</source>
        <translation>{exercise}: no necesita</translation>
    </message>
    <message>
        <source>{exercise}: not in the catalogue</source>
        <translation>{exercise}: no está en el catálogo</translation>
    </message>
    <message>
        <source>{exercise}: has words and pictures</source>
        <translation>{exercise}: tiene palabras y dibujos</translation>
    </message>
    <message>
        <source>{exercise}: has no words</source>
        <translation>{exercise}: no tiene palabras</translation>
    </message>
    <message>
        <source>{exercise}: has a rule</source>
        <translation>{exercise}: tiene una regla</translation>
    </message>
    <message>
        <source>{exercise}: has no rule for its next step</source>
        <translation>{exercise}: no tiene regla para el paso siguiente</translation>
    </message>
    <message>
        <source>{exercise}: dose and days stated</source>
        <translation>{exercise}: dosis y días indicados</translation>
    </message>
    <message>
        <source>{exercise}: dose or days missing</source>
        <translation>{exercise}: falta la dosis o los días</translation>
    </message>
    <message>
        <source>{exercise}: sides and support chosen</source>
        <translation>{exercise}: lados y apoyo elegidos</translation>
    </message>
    <message>
        <source>{exercise}: side or support missing</source>
        <translation>{exercise}: falta el lado o el apoyo</translation>
    </message>
    <message>
        <source>The programme gives advice</source>
        <translation>El programa da consejos</translation>
    </message>
    <message>
        <source>{exercise}: limb care</source>
        <translation>{exercise}: cuidado del muñón</translation>
    </message>
    <message>
        <source>No general advice and no limb care</source>
        <translation>Ni consejos generales ni cuidado del muñón</translation>
    </message>
    <message>
        <source>The first programme: nothing was progressed yet</source>
        <translation>El primer programa: aún no ha progresado nada</translation>
    </message>
    <message>
        <source>The programme says what changed</source>
        <translation>El programa dice qué cambió</translation>
    </message>
    <message>
        <source>The programme does not say what changed</source>
        <translation>El programa no dice qué cambió</translation>
    </message>
    <message>
        <source>{practices} practices; with a red flag {red_flags}, a fall {falls}, a stop for pain {pain}, for skin {skin}, other {other}</source>
        <translation>{practices} prácticas; con señal de alarma {red_flags}, con caída {falls}, paradas por dolor {pain}, por la piel {skin}, otras {other}</translation>
    </message>
    <message>
        <source>{done} of {due} occasions done</source>
        <translation>{done} de {due} ocasiones hechas</translation>
    </message>
    <message>
        <source>No practice known yet</source>
        <translation>Aún no se conoce ninguna práctica</translation>
    </message>
    <message>
        <source>The home is described</source>
        <translation>La casa está descrita</translation>
    </message>
    <message>
        <source>The home is not described in the record</source>
        <translation>La casa no está descrita en la ficha</translation>
    </message>
    <message>
        <source>Equipment: what kind, which settings</source>
        <translation>Material: de qué tipo, con qué ajustes</translation>
    </message>
    <message>
        <source>Who instructs: qualification and training</source>
        <translation>Quién enseña: titulación y formación</translation>
    </message>
    <message>
        <source>Alone or in a group</source>
        <translation>Solo o en grupo</translation>
    </message>
    <message>
        <source>Supervised or not, and how it is delivered</source>
        <translation>Con supervisión o sin ella, y cómo se da</translation>
    </message>
    <message>
        <source>How adherence is measured and reported</source>
        <translation>Cómo se mide y se comunica el cumplimiento</translation>
    </message>
    <message>
        <source>How people are kept motivated</source>
        <translation>Cómo se mantiene la motivación</translation>
    </message>
    <message>
        <source>The rule that decides on progression</source>
        <translation>La regla que decide la progresión</translation>
    </message>
    <message>
        <source>How it was progressed</source>
        <translation>Cómo se progresó</translation>
    </message>
    <message>
        <source>Each exercise, well enough to repeat it</source>
        <translation>Cada ejercicio, con detalle para repetirlo</translation>
    </message>
    <message>
        <source>The part done at home</source>
        <translation>La parte que se hace en casa</translation>
    </message>
    <message>
        <source>Parts that are not exercise, such as education</source>
        <translation>Partes que no son ejercicio, como la educación</translation>
    </message>
    <message>
        <source>Adverse events: kind and number</source>
        <translation>Efectos adversos: tipo y número</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Dose: sets, repetitions, load, length, intensity, frequency</source>
        <translation>Dosis: series, repeticiones, carga, duración, intensidad, frecuencia</translation>
    </message>
    <message>
        <source>The same for all, or tailored</source>
        <translation>Igual para todos o adaptado</translation>
    </message>
    <message>
        <source>How it is tailored</source>
        <translation>Cómo se adapta</translation>
    </message>
    <message>
        <source>The rule for the level to start at</source>
        <translation>La regla para el nivel de inicio</translation>
    </message>
    <message>
        <source>How it is judged whether it was done as planned</source>
        <translation>Cómo se juzga si se hizo como estaba previsto</translation>
    </message>
    <message>
        <source>How far it was done as planned</source>
        <translation>Hasta qué punto se hizo como estaba previsto</translation>
    </message>
    <message>
        <source>By its rule: stay at this step.</source>
        <translation>Según su regla: seguir en este paso.</translation>
    </message>
    <message>
        <source>By its rule: ready for the next step. Yours to decide.</source>
        <translation>Según su regla: listo para el paso siguiente. Usted decide.</translation>
    </message>
    <message>
        <source>By its rule: it was too hard again and again. Look at a step back.</source>
        <translation>Según su regla: fue demasiado difícil una y otra vez. Considere un paso atrás.</translation>
    </message>
    <message>
        <source>It has no rule, so nothing is said of a next step.</source>
        <translation>No tiene regla, así que nada se dice de un paso siguiente.</translation>
    </message>
</context>
<context>
    <name>FileWords</name>
    <message>
        <source>an earlier exercise</source>
        <translation>un ejercicio anterior</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
</context>
<context>
    <name>FindPage</name>
    <message>
        <source>Find a person</source>
        <translation>Buscar una persona</translation>
    </message>
    <message>
        <source>By the whole family name. It shows who somebody is and nothing else, and each search is written into the audit trail.</source>
        <translation>Por el apellido completo. Muestra quién es alguien y nada más, y cada búsqueda se escribe en el registro de auditoría.</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Whole family name</source>
        <translation>Apellido completo</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Buscando …</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Phones and therapists</source>
        <translation>Teléfonos y terapeutas</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open by a written reason</source>
        <translation>Abrir con un motivo escrito</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1 is not assigned to you</source>
        <translation>%1 no está asignado a usted</translation>
    </message>
    <message>
        <source>Open this record only when it cannot wait for whoever looks after them. Your name, the time and what you look at are written into the audit trail. Your reason is shown for a week to everybody who sees this person. The record closes by itself after a time that the bar at the top then shows.</source>
        <translation>Abra esta ficha solo cuando no pueda esperar a quien le atiende. Su nombre, la hora y lo que mira se escriben en el registro de auditoría. Su motivo se muestra durante una semana a todos los que ven a esta persona. La ficha se cierra sola tras un tiempo que la barra de arriba muestra entonces.</translation>
    </message>
    <message>
        <source>Why it cannot wait</source>
        <translation>Por qué no puede esperar</translation>
    </message>
    <message>
        <source>for example: their therapist is ill, and they phoned about a fall</source>
        <translation>por ejemplo: su terapeuta está de baja y llamó por una caída</translation>
    </message>
    <message>
        <source>Opening …</source>
        <translation>Abriendo …</translation>
    </message>
    <message>
        <source>Open the record and write it down</source>
        <translation>Abrir la ficha y anotarlo</translation>
    </message>
    <message>
        <source>Do not open it</source>
        <translation>No abrirla</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Reason, %1: %2</source>
        <translation>Motivo, %1: %2</translation>
    </message>
    <message>
        <source>What would answer it:</source>
        <translation>Qué lo resolvería:</translation>
    </message>
    <message>
        <source>%1, because of: %2</source>
        <translation>%1, por: %2</translation>
    </message>
    <message>
        <source>Your reason</source>
        <translation>Su motivo</translation>
    </message>
    <message>
        <source>Needs a written reason, kept under your signature.</source>
        <translation>Hace falta un motivo escrito, que queda bajo su firma.</translation>
    </message>
</context>
<context>
    <name>FolderChooser</name>
    <message>
        <source>Where the document goes</source>
        <translation>Adónde va el documento</translation>
    </message>
</context>
<context>
    <name>HoldPage</name>
    <message>
        <source>Lift a hold for %1</source>
        <translation>Levantar una suspensión de %1</translation>
    </message>
    <message>
        <source>Look once more</source>
        <translation>Mire una vez más</translation>
    </message>
    <message>
        <source>Hold order for %1</source>
        <translation>Orden de suspensión para %1</translation>
    </message>
    <message>
        <source>A hold stops a practice under way as soon as it arrives, and lets none begin. It stays until you lift it.</source>
        <translation>Una suspensión para una práctica en curso en cuanto llega, y no deja empezar ninguna. Sigue hasta que usted la levante.</translation>
    </message>
    <message>
        <source>Hold everything</source>
        <translation>Suspender todo</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Suspender</translation>
    </message>
    <message>
        <source>Why it may go on, in words for them</source>
        <translation>Por qué puede seguir, en palabras para la persona</translation>
    </message>
    <message>
        <source>Why, in words for them</source>
        <translation>Por qué, en palabras para la persona</translation>
    </message>
    <message>
        <source>Reason for the person</source>
        <translation>Motivo para la persona</translation>
    </message>
    <message>
        <source>%1 may practise again.</source>
        <translation>%1 puede practicar otra vez.</translation>
    </message>
    <message>
        <source>%1 stops: %2.</source>
        <translation>%1 para: %2.</translation>
    </message>
    <message>
        <source>They will read: &quot;%1&quot;</source>
        <translation>Leerá: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Sending …</source>
        <translation>Enviando …</translation>
    </message>
    <message>
        <source>Lift the hold</source>
        <translation>Levantar la suspensión</translation>
    </message>
    <message>
        <source>Send hold order</source>
        <translation>Enviar la orden de suspensión</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiarlo</translation>
    </message>
</context>
<context>
    <name>ImportFileDialog</name>
    <message>
        <source>A FHIR file</source>
        <translation>Un archivo FHIR</translation>
    </message>
    <message>
        <source>FHIR (*.json)</source>
        <translation>FHIR (*.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>ImportModel</name>
    <message>
        <source>Asked for by %1</source>
        <translation>Lo pide %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>el %1</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Motivo: %1</translation>
    </message>
    <message>
        <source>Where: %1</source>
        <translation>Dónde: %1</translation>
    </message>
    <message>
        <source>No exercise of the catalogue is named: yours to choose</source>
        <translation>No nombra ningún ejercicio del catálogo: lo elige usted</translation>
    </message>
    <message>
        <source>A request without a title</source>
        <translation>Una petición sin título</translation>
    </message>
</context>
<context>
    <name>ImportPane</name>
    <message>
        <source>From a file of another system (FHIR), may be left out</source>
        <translation>De un archivo de otro sistema (FHIR), puede omitirse</translation>
    </message>
    <message>
        <source>FHIR file of another system</source>
        <translation>Archivo FHIR de otro sistema</translation>
    </message>
    <message>
        <source>Path of a file on this computer, or drop it here</source>
        <translation>Ruta de un archivo de este equipo, o suéltelo aquí</translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Leyendo …</translation>
    </message>
    <message>
        <source>Read this file</source>
        <translation>Leer este archivo</translation>
    </message>
    <message>
        <source>Choose a file …</source>
        <translation>Elegir un archivo …</translation>
    </message>
    <message>
        <source>Choose a FHIR file</source>
        <translation>Elegir un archivo FHIR</translation>
    </message>
    <message>
        <source>Read this first: %1</source>
        <translation>Lea esto primero: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Hide what was not taken</source>
        <translation>Ocultar lo que no se tomó</translation>
    </message>
    <message>
        <source>What was not taken (%1)</source>
        <translation>Lo que no se tomó (%1)</translation>
    </message>
    <message>
        <source>One thing is asked for; it is beside you when you write the first programme, and kept as a note.</source>
        <translation>Se pide una cosa; la tiene al lado cuando escribe el primer programa, y queda guardada como nota.</translation>
    </message>
    <message>
        <source>%1 things are asked for; they are beside you when you write the first programme, and kept as notes.</source>
        <translation>Se piden %1 cosas; las tiene al lado cuando escribe el primer programa, y quedan guardadas como notas.</translation>
    </message>
</context>
<context>
    <name>LimbForm</name>
    <message>
        <source>Level, %1</source>
        <translation>Nivel, %1</translation>
    </message>
    <message>
        <source>Has a prosthesis, %1</source>
        <translation>Tiene prótesis, %1</translation>
    </message>
    <message>
        <source>Prosthetic knee, %1</source>
        <translation>Rodilla protésica, %1</translation>
    </message>
    <message>
        <source>Prosthetic foot, %1</source>
        <translation>Pie protésico, %1</translation>
    </message>
</context>
<context>
    <name>LockCover</name>
    <message>
        <source>This desk is locked</source>
        <translation>Este puesto está bloqueado</translation>
    </message>
    <message>
        <source>%1 is at work here. %2 Nothing that was written is lost.</source>
        <translation>%1 está trabajando aquí. %2 No se pierde nada de lo escrito.</translation>
    </message>
    <message>
        <source>Password of %1</source>
        <translation>Contraseña de %1</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>Code of the second factor</source>
        <translation>Código del segundo factor</translation>
    </message>
    <message>
        <source>six digits, from your code app</source>
        <translation>seis cifras, de su aplicación de códigos</translation>
    </message>
    <message>
        <source>Signing in …</source>
        <translation>Entrando …</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Desbloquear</translation>
    </message>
    <message>
        <source>What is on the screens of %1 is closed. Programmes being written are kept on this desk; a message, a record or a reason that was not saved is lost.</source>
        <translation>Se cierra lo que %1 tiene en pantalla. Los programas a medio escribir se guardan en este puesto; un mensaje, una ficha o un motivo sin guardar se pierde.</translation>
    </message>
    <message>
        <source>Yes, close it</source>
        <translation>Sí, cerrarlo</translation>
    </message>
    <message>
        <source>Somebody else signs in</source>
        <translation>Entra otra persona</translation>
    </message>
    <message>
        <source>No, leave it</source>
        <translation>No, dejarlo</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Newel Desk, locked</source>
        <translation>Newel Desk, bloqueado</translation>
    </message>
    <message>
        <source>Newel Desk</source>
        <translation>Newel Desk</translation>
    </message>
    <message>
        <source>%1 - Newel Desk</source>
        <translation>%1 - Newel Desk</translation>
    </message>
</context>
<context>
    <name>ManyPage</name>
    <message>
        <source>Hold order for one person</source>
        <translation>Orden de suspensión para una persona</translation>
    </message>
    <message>
        <source>Message to one person</source>
        <translation>Mensaje a una persona</translation>
    </message>
    <message>
        <source>Hold order for %L1 people</source>
        <translation>Orden de suspensión para %L1 personas</translation>
    </message>
    <message>
        <source>Message to %L1 people</source>
        <translation>Mensaje a %L1 personas</translation>
    </message>
    <message>
        <source>Stop sending</source>
        <translation>Dejar de enviar</translation>
    </message>
    <message>
        <source>Send to those it did not reach (%L1)</source>
        <translation>Enviar a quienes no llegó (%L1)</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Mirar de nuevo</translation>
    </message>
    <message>
        <source>Look again how far it got</source>
        <translation>Mirar de nuevo hasta dónde llegó</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Message</source>
        <translation>Mensaje</translation>
    </message>
    <message>
        <source>Hold order: stop everything now</source>
        <translation>Orden de suspensión: parar todo ahora</translation>
    </message>
    <message>
        <source>A hold stops a practice under way as soon as it arrives, and lets none begin. It stays until you lift it for each of them.</source>
        <translation>Una suspensión para una práctica en curso en cuanto llega, y no deja empezar ninguna. Sigue hasta que usted la levante para cada persona.</translation>
    </message>
    <message>
        <source>Why, in words for them</source>
        <translation>Por qué, en palabras para ellas</translation>
    </message>
    <message>
        <source>Your words to them</source>
        <translation>Sus palabras para ellas</translation>
    </message>
    <message>
        <source>Reason for the people</source>
        <translation>Motivo para las personas</translation>
    </message>
    <message>
        <source>Everybody reads the same words: no names, nothing about one of them</source>
        <translation>Todas leen lo mismo: sin nombres, nada sobre una sola</translation>
    </message>
    <message>
        <source>Urgent: must be seen before the next practice</source>
        <translation>Urgente: debe verse antes de la próxima práctica</translation>
    </message>
    <message>
        <source>Photo or clip (may be left out)</source>
        <translation>Foto o vídeo (puede omitirse)</translation>
    </message>
    <message>
        <source>Path of a file on this computer, or drop it here</source>
        <translation>Ruta de un archivo de este equipo, o suéltelo aquí</translation>
    </message>
    <message>
        <source>Take this file</source>
        <translation>Tomar este archivo</translation>
    </message>
    <message>
        <source>Choose a file …</source>
        <translation>Elegir un archivo …</translation>
    </message>
    <message>
        <source>Choose a photo or a clip</source>
        <translation>Elegir una foto o un vídeo</translation>
    </message>
    <message>
        <source>Clip: %1</source>
        <translation>Vídeo: %1</translation>
    </message>
    <message>
        <source>Photo: %1</source>
        <translation>Foto: %1</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Quitarlo</translation>
    </message>
    <message>
        <source>Take the photo or the clip out</source>
        <translation>Quitar la foto o el vídeo</translation>
    </message>
    <message>
        <source>What the clip shows</source>
        <translation>Qué muestra el vídeo</translation>
    </message>
    <message>
        <source>What the photo shows</source>
        <translation>Qué muestra la foto</translation>
    </message>
    <message>
        <source>One sentence, for who does not see it. Needed.</source>
        <translation>Una frase, para quien no la ve. Hace falta.</translation>
    </message>
    <message>
        <source>What is said in the clip</source>
        <translation>Qué se dice en el vídeo</translation>
    </message>
    <message>
        <source>Word for word, for who does not hear it. Empty when nothing is said.</source>
        <translation>Palabra por palabra, para quien no lo oye. Vacío si no se dice nada.</translation>
    </message>
    <message>
        <source>Look once more</source>
        <translation>Mirar otra vez</translation>
    </message>
    <message>
        <source>%L1 people stop everything.</source>
        <translation>%L1 personas lo paran todo.</translation>
    </message>
    <message>
        <source>Urgent: nobody can begin a practice before it is seen.</source>
        <translation>Urgente: nadie puede empezar una práctica antes de verlo.</translation>
    </message>
    <message>
        <source>Each of them gets it as a message of yours.</source>
        <translation>Cada una lo recibe como un mensaje suyo.</translation>
    </message>
    <message>
        <source>They will read: &quot;%1&quot;</source>
        <translation>Leerán: «%1»</translation>
    </message>
    <message>
        <source>With the clip: %1</source>
        <translation>Con el vídeo: %1</translation>
    </message>
    <message>
        <source>With the photo: %1</source>
        <translation>Con la foto: %1</translation>
    </message>
    <message>
        <source>Send %L1 hold orders</source>
        <translation>Enviar %L1 órdenes de suspensión</translation>
    </message>
    <message>
        <source>Send to %L1</source>
        <translation>Enviar a %L1</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiarlo</translation>
    </message>
    <message>
        <source>Who has it, those first who do not</source>
        <translation>Quién lo tiene, primero quienes no</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>MeasuresPage</name>
    <message>
        <source>Measures of %1</source>
        <translation>Medidas de %1</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Value, %1</source>
        <translation>Valor, %1</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Walking aid used</source>
        <translation>Ayuda para andar usada</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Left leg</source>
        <translation>Pierna izquierda</translation>
    </message>
    <message>
        <source>Right leg</source>
        <translation>Pierna derecha</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Saving …</source>
        <translation>Guardando …</translation>
    </message>
    <message>
        <source>Save the measure</source>
        <translation>Guardar la medida</translation>
    </message>
    <message>
        <source>The person sees value and day on the phone, without a verdict. A measure does not say a mobility level: that is yours.</source>
        <translation>La persona ve el valor y el día en el teléfono, sin juicio. Una medida no dice un nivel de movilidad: eso lo decide usted.</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Aún no se midió nada.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Shaded: within the error of the first value.</source>
        <translation>Sombreado: dentro del error del primer valor.</translation>
    </message>
    <message>
        <source>Entered by mistake</source>
        <translation>Anotado por error</translation>
    </message>
    <message>
        <source>Entered by mistake: %1</source>
        <translation>Anotado por error: %1</translation>
    </message>
</context>
<context>
    <name>MediaFields</name>
    <message>
        <source>Photo or clip (may be left out)</source>
        <translation>Foto o vídeo (puede omitirse)</translation>
    </message>
    <message>
        <source>Path of a file on this computer, or drop it here</source>
        <translation>Ruta de un archivo de este ordenador, o suéltelo aquí</translation>
    </message>
    <message>
        <source>Photos: any size. Clips: MP4, MOV or WebM, 16 MiB at most. Where and when it was taken is taken out. The handout leaves both out.</source>
        <translation>Fotos: cualquier tamaño. Vídeos: MP4, MOV o WebM, 16 MiB como mucho. Se quita dónde y cuándo se tomó. La hoja no incluye ninguno.</translation>
    </message>
    <message>
        <source>Choose a file …</source>
        <translation>Elegir un archivo …</translation>
    </message>
    <message>
        <source>Take this file</source>
        <translation>Usar este archivo</translation>
    </message>
    <message>
        <source>What the photo shows</source>
        <translation>Lo que muestra la foto</translation>
    </message>
    <message>
        <source>One sentence, for who does not see it. Needed.</source>
        <translation>Una frase, para quien no la ve. Necesaria.</translation>
    </message>
    <message>
        <source>Take the photo out</source>
        <translation>Quitar la foto</translation>
    </message>
    <message>
        <source>What the clip shows</source>
        <translation>Lo que muestra el vídeo</translation>
    </message>
    <message>
        <source>What is said in the clip</source>
        <translation>Lo que se dice en el vídeo</translation>
    </message>
    <message>
        <source>Word for word, for who does not hear it. Empty when nothing is said.</source>
        <translation>Palabra por palabra, para quien no lo oye. Vacío si no se dice nada.</translation>
    </message>
    <message>
        <source>Take the clip out</source>
        <translation>Quitar el vídeo</translation>
    </message>
</context>
<context>
    <name>MediaFileDialog</name>
    <message>
        <source>A photo or a clip</source>
        <translation>Una foto o un vídeo</translation>
    </message>
    <message>
        <source>Photos and clips (*.jpg *.jpeg *.png *.webp *.bmp *.mp4 *.m4v *.mov *.webm)</source>
        <translation>Fotos y vídeos (*.jpg *.jpeg *.png *.webp *.bmp *.mp4 *.m4v *.mov *.webm)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>MessageFileDialog</name>
    <message>
        <source>A photo or a clip</source>
        <translation>Una foto o un vídeo</translation>
    </message>
    <message>
        <source>Photos and clips (*.jpg *.jpeg *.png *.webp *.bmp *.mp4 *.m4v *.mov *.webm)</source>
        <translation>Fotos y vídeos (*.jpg *.jpeg *.png *.webp *.bmp *.mp4 *.m4v *.mov *.webm)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>MessagePane</name>
    <message>
        <source>Messages</source>
        <translation>Mensajes</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Aún ninguno.</translation>
    </message>
    <message>
        <source>%1, %2%3</source>
        <translation>%1, %2%3</translation>
    </message>
    <message>
        <source> · urgent</source>
        <translation> · urgente</translation>
    </message>
    <message>
        <source>Message to %1</source>
        <translation>Mensaje a %1</translation>
    </message>
    <message>
        <source>Write to %1</source>
        <translation>Escribir a %1</translation>
    </message>
    <message>
        <source>Urgent: must be seen before the next practice</source>
        <translation>Urgente: debe verse antes de la próxima práctica</translation>
    </message>
    <message>
        <source>Sending …</source>
        <translation>Enviando …</translation>
    </message>
    <message>
        <source>Send message</source>
        <translation>Enviar mensaje</translation>
    </message>
    <message>
        <source>Nobody reads messages at once. For anything that cannot wait, phone.</source>
        <translation>Nadie lee los mensajes al momento. Para lo que no puede esperar, llame.</translation>
    </message>
    <message>
        <source>With a photo or a clip …</source>
        <translation>Con una foto o un vídeo …</translation>
    </message>
</context>
<context>
    <name>NextStep</name>
    <message>
        <source>Next step</source>
        <translation>Paso siguiente</translation>
    </message>
    <message>
        <source>for: %1</source>
        <translation>a favor: %1</translation>
    </message>
    <message>
        <source>against: %1</source>
        <translation>en contra: %1</translation>
    </message>
    <message>
        <source>Ladder, lowest step first</source>
        <translation>Escalera, primero el peldaño más bajo</translation>
    </message>
    <message>
        <source>When it may be ready</source>
        <translation>Cuándo puede estar listo</translation>
    </message>
    <message>
        <source>Hide the rule&apos;s numbers</source>
        <translation>Ocultar los números de la regla</translation>
    </message>
    <message>
        <source>The rule&apos;s numbers</source>
        <translation>Los números de la regla</translation>
    </message>
    <message>
        <source>A missed day begins the row anew</source>
        <translation>Un día sin hacer empieza la serie de nuevo</translation>
    </message>
</context>
<context>
    <name>NumberStepper</name>
    <message>
        <source>Less: %1</source>
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
</context>
<context>
    <name>OwnAccount</name>
    <message>
        <source>The new password is too short: 8 characters at least, and 15 are better. Some words in a row are easy to keep in mind.</source>
        <translation>La contraseña nueva es demasiado corta: 8 caracteres como mínimo, y mejor 15. Unas palabras seguidas son fáciles de recordar.</translation>
    </message>
    <message>
        <source>The new password is too long: 256 bytes at most.</source>
        <translation>La contraseña nueva es demasiado larga: 256 bytes como mucho.</translation>
    </message>
    <message>
        <source>The new password must not be your user name.</source>
        <translation>La contraseña nueva no puede ser su nombre de usuario.</translation>
    </message>
    <message>
        <source>The new password must not be the old one again.</source>
        <translation>La contraseña nueva no puede ser otra vez la anterior.</translation>
    </message>
    <message>
        <source>The new password is one character repeated.</source>
        <translation>La contraseña nueva es un solo carácter repetido.</translation>
    </message>
    <message>
        <source>Therapist</source>
        <translation>Terapeuta</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Administrator</source>
        <translation>Administrador</translation>
    </message>
    <message>
        <source>Auditor</source>
        <translation>Auditor</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
</context>
<context>
    <name>OwnAccountPage</name>
    <message>
        <source>My account</source>
        <translation>Mi cuenta</translation>
    </message>
    <message>
        <source>%1 · user name %2 · %3</source>
        <translation>%1 · usuario %2 · %3</translation>
    </message>
    <message>
        <source>First choose a password of your own</source>
        <translation>Primero elija una contraseña propia</translation>
    </message>
    <message>
        <source>First set up a second factor</source>
        <translation>Primero configure un segundo factor</translation>
    </message>
    <message>
        <source>The first password was made for you and somebody else has seen it. Nothing else opens before it is changed.</source>
        <translation>La primera contraseña se creó para usted y otra persona la ha visto. No se abre nada más antes de cambiarla.</translation>
    </message>
    <message>
        <source>This clinic asks everybody for one. Nothing else opens before it is set up.</source>
        <translation>Esta clínica lo pide a todos. No se abre nada más antes de configurarlo.</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>At least 8 characters, better 15 or more: some words in a row are easy to keep in mind. Your other sign-ins end when it is changed.</source>
        <translation>Al menos 8 caracteres, mejor 15 o más: unas palabras seguidas son fáciles de recordar. Sus otras sesiones terminan al cambiarla.</translation>
    </message>
    <message>
        <source>First password</source>
        <translation>Primera contraseña</translation>
    </message>
    <message>
        <source>Old password</source>
        <translation>Contraseña anterior</translation>
    </message>
    <message>
        <source>New password</source>
        <translation>Contraseña nueva</translation>
    </message>
    <message>
        <source>New password once more</source>
        <translation>Contraseña nueva otra vez</translation>
    </message>
    <message>
        <source>Change the password</source>
        <translation>Cambiar la contraseña</translation>
    </message>
    <message>
        <source>Second factor</source>
        <translation>Segundo factor</translation>
    </message>
    <message>
        <source>In use. Each sign-in asks for a code of your code app. If you lose the device, a lead or an administrator takes the second factor away, or whoever runs the hub; then you set up a new one.</source>
        <translation>En uso. Cada entrada pide un código de su aplicación de códigos. Si pierde el dispositivo, un responsable o un administrador quita el segundo factor, o quien lleva el hub; después configura usted otro.</translation>
    </message>
    <message>
        <source>Not in use. With it, who learns your password still cannot sign in: each sign-in also asks for six digits that an app on your phone shows. Any app for time-based codes will do.</source>
        <translation>No está en uso. Con él, quien conozca su contraseña aún no puede entrar: cada entrada pide además seis cifras que muestra una aplicación de su teléfono. Vale cualquier aplicación de códigos por tiempo.</translation>
    </message>
    <message>
        <source>Your password, once more</source>
        <translation>Su contraseña, otra vez</translation>
    </message>
    <message>
        <source>Password for the second factor</source>
        <translation>Contraseña para el segundo factor</translation>
    </message>
    <message>
        <source>Set up a second factor</source>
        <translation>Configurar un segundo factor</translation>
    </message>
    <message>
        <source>Square code to scan with your code app</source>
        <translation>Código cuadrado para leer con su aplicación de códigos</translation>
    </message>
    <message>
        <source>1. In the code app, add an account and scan the square, or type this key:</source>
        <translation>1. En la aplicación de códigos, añada una cuenta y lea el cuadrado, o escriba esta clave:</translation>
    </message>
    <message>
        <source>Key to type: %1</source>
        <translation>Clave para escribir: %1</translation>
    </message>
    <message>
        <source>It is shown only now, and belongs to you alone.</source>
        <translation>Se muestra solo ahora, y es solo suya.</translation>
    </message>
    <message>
        <source>2. Type the six digits that the app then shows:</source>
        <translation>2. Escriba las seis cifras que muestra entonces la aplicación:</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>First code</source>
        <translation>Primer código</translation>
    </message>
    <message>
        <source>six digits</source>
        <translation>seis cifras</translation>
    </message>
    <message>
        <source>Use this second factor</source>
        <translation>Usar este segundo factor</translation>
    </message>
</context>
<context>
    <name>OwnExercise</name>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>How to take up the position</source>
        <translation>Cómo ponerse en posición</translation>
    </message>
    <message>
        <source>What the hands hold</source>
        <translation>Dónde se agarran las manos</translation>
    </message>
    <message>
        <source>Done well</source>
        <translation>Bien hecho</translation>
    </message>
    <message>
        <source>A common fault and its correction</source>
        <translation>Un fallo frecuente y su corrección</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Respiración</translation>
    </message>
    <message>
        <source>Stop if</source>
        <translation>Parar si</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Tener cuidado</translation>
    </message>
    <message>
        <source>What to do in each part</source>
        <translation>Qué hacer en cada parte</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Muscles</source>
        <translation>Músculos</translation>
    </message>
    <message>
        <source>Support</source>
        <translation>Apoyo</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Lados</translation>
    </message>
    <message>
        <source>Prosthesis</source>
        <translation>Prótesis</translation>
    </message>
    <message>
        <source>Least mobility</source>
        <translation>Movilidad mínima</translation>
    </message>
    <message>
        <source>What the rules look at</source>
        <translation>Lo que miran las reglas</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <source>Both limbs lost</source>
        <translation>Ambas piernas perdidas</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>is still missing</source>
        <translation>aún falta</translation>
    </message>
    <message>
        <source>is too long to be said in its time: fewer words, or a longer time</source>
        <translation>es demasiado largo para decirlo en su tiempo: menos palabras, o más tiempo</translation>
    </message>
    <message>
        <source>needs two to four lines</source>
        <translation>necesita de dos a cuatro líneas</translation>
    </message>
    <message>
        <source>cannot be said to a person who has lost both; say that it is not for them</source>
        <translation>no se puede decir a quien perdió ambas; diga que no es para esas personas</translation>
    </message>
    <message>
        <source>lacks something that belongs to this position</source>
        <translation>le falta algo propio de esta posición</translation>
    </message>
    <message>
        <source>on</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>off</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>on or off</source>
        <translation>puesta o quitada</translation>
    </message>
    <message>
        <source>not for them</source>
        <translation>no es para esas personas</translation>
    </message>
    <message>
        <source>the same words fit</source>
        <translation>valen las mismas palabras</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>OwnExerciseForm</name>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Up to 80 letters</source>
        <translation>Hasta 80 letras</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>One plain sentence to the person</source>
        <translation>Una frase sencilla para la persona</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>How to take up the position</source>
        <translation>Cómo ponerse en posición</translation>
    </message>
    <message>
        <source>Plain words: what to fetch, where to stand, sit or lie</source>
        <translation>Palabras sencillas: qué buscar, dónde ponerse de pie, sentarse o tumbarse</translation>
    </message>
    <message>
        <source>A few words: they are shown and said in the time of this part</source>
        <translation>Pocas palabras: se muestran y se dicen en el tiempo de esta parte</translation>
    </message>
    <message>
        <source>{working} stands for the working leg: the phone says left or right.</source>
        <translation>{working} es la pierna que trabaja: el teléfono dice izquierda o derecha.</translation>
    </message>
    <message>
        <source>Sides it may be done on</source>
        <translation>Lados en que puede hacerse</translation>
    </message>
    <message>
        <source>Support it may be done with</source>
        <translation>Apoyos con que puede hacerse</translation>
    </message>
    <message>
        <source>What the hands hold</source>
        <translation>Dónde se agarran las manos</translation>
    </message>
    <message>
        <source>{support} stands for the support that is chosen</source>
        <translation>{support} es el apoyo elegido</translation>
    </message>
    <message>
        <source>Prosthesis</source>
        <translation>Prótesis</translation>
    </message>
    <message>
        <source>Least mobility level</source>
        <translation>Nivel mínimo de movilidad</translation>
    </message>
    <message>
        <source>Both limbs lost</source>
        <translation>Ambas piernas perdidas</translation>
    </message>
    <message>
        <source>Muscles</source>
        <translation>Músculos</translation>
    </message>
    <message>
        <source>What is needed</source>
        <translation>Lo que hace falta</translation>
    </message>
    <message>
        <source>What the safety rules look at</source>
        <translation>Lo que miran las reglas de seguridad</translation>
    </message>
    <message>
        <source>Done well</source>
        <translation>Bien hecho</translation>
    </message>
    <message>
        <source>Two to four lines</source>
        <translation>De dos a cuatro líneas</translation>
    </message>
    <message>
        <source>A common fault</source>
        <translation>Un fallo frecuente</translation>
    </message>
    <message>
        <source>What you would see</source>
        <translation>Lo que vería usted</translation>
    </message>
    <message>
        <source>Its correction</source>
        <translation>Su corrección</translation>
    </message>
    <message>
        <source>What to say to it</source>
        <translation>Qué decir entonces</translation>
    </message>
    <message>
        <source>Breathing</source>
        <translation>Respiración</translation>
    </message>
    <message>
        <source>Stop if</source>
        <translation>Parar si</translation>
    </message>
    <message>
        <source>One line each</source>
        <translation>Una línea para cada uno</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Tener cuidado</translation>
    </message>
    <message>
        <source>One line each: what can go wrong here</source>
        <translation>Una línea para cada uno: qué puede ir mal aquí</translation>
    </message>
    <message>
        <source>Photo (may be left out)</source>
        <translation>Foto (puede omitirse)</translation>
    </message>
    <message>
        <source>Path of a picture on this computer; place and time in it are left behind</source>
        <translation>Ruta de una imagen de este ordenador; no se guarda el lugar ni la hora</translation>
    </message>
    <message>
        <source>Take this photo</source>
        <translation>Usar esta foto</translation>
    </message>
    <message>
        <source>No photo</source>
        <translation>Sin foto</translation>
    </message>
    <message>
        <source>Photo of the exercise</source>
        <translation>Foto del ejercicio</translation>
    </message>
    <message>
        <source>Before it can be saved: %1</source>
        <translation>Antes de poder guardarlo: %1</translation>
    </message>
    <message>
        <source>Saving …</source>
        <translation>Guardando …</translation>
    </message>
    <message>
        <source>Save for the clinic</source>
        <translation>Guardar para la clínica</translation>
    </message>
</context>
<context>
    <name>OwnExercisePage</name>
    <message>
        <source>Our exercises</source>
        <translation>Nuestros ejercicios</translation>
    </message>
    <message>
        <source>Exercises that this clinic wrote. A revision never changes a programme that is signed already.</source>
        <translation>Ejercicios que escribió esta clínica. Una revisión nunca cambia un programa ya firmado.</translation>
    </message>
    <message>
        <source>Revise</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Revise %1</source>
        <translation>Revisar %1</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Aún ninguno.</translation>
    </message>
    <message>
        <source>Write a new one: how does it move?</source>
        <translation>Escribir uno nuevo: ¿cómo se mueve?</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
</context>
<context>
    <name>PainLimits</name>
    <message>
        <source>Stop over pain of</source>
        <translation>Parar por encima de dolor</translation>
    </message>
    <message>
        <source>Stop over pain of, %1</source>
        <translation>Parar por encima de dolor, %1</translation>
    </message>
    <message>
        <source>of 10</source>
        <translation>de 10</translation>
    </message>
    <message>
        <source>Or when it rises by</source>
        <translation>O cuando sube</translation>
    </message>
    <message>
        <source>Or when it rises by, %1</source>
        <translation>O cuando sube, %1</translation>
    </message>
</context>
<context>
    <name>PairingPage</name>
    <message>
        <source>Pair a phone with %1</source>
        <translation>Vincular un teléfono con %1</translation>
    </message>
    <message>
        <source>Paired: %1</source>
        <translation>Vinculado: %1</translation>
    </message>
    <message>
        <source>The code is used up. The programme goes to this phone by itself.</source>
        <translation>El código ya se usó. El programa va solo a este teléfono.</translation>
    </message>
    <message>
        <source>Pairing code to scan with the phone</source>
        <translation>Código de vinculación para leer con el teléfono</translation>
    </message>
    <message>
        <source>Code to type</source>
        <translation>Código para escribir</translation>
    </message>
    <message>
        <source>Code to type: %1</source>
        <translation>Código para escribir: %1</translation>
    </message>
    <message>
        <source>Address to type: %1</source>
        <translation>Dirección para escribir: %1</translation>
    </message>
    <message>
        <source>When typed by hand, compare this on both screens: %1</source>
        <translation>Si se escribe a mano, compare esto en ambas pantallas: %1</translation>
    </message>
    <message>
        <source>New code</source>
        <translation>Código nuevo</translation>
    </message>
    <message>
        <source>The code works once, for this person only. Show it to nobody else.</source>
        <translation>El código vale una vez, solo para esta persona. No lo enseñe a nadie más.</translation>
    </message>
    <message>
        <source>On the phone, open Newel and type the address and the code. Or press Use the camera there and hold it before the square.</source>
        <translation>En el teléfono, abra Newel y escriba la dirección y el código. O pulse Usar la cámara y póngalo delante del cuadro.</translation>
    </message>
</context>
<context>
    <name>PersonEditPage</name>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation>Fecha de nacimiento</translation>
    </message>
    <message>
        <source>1961-05-04, may be empty</source>
        <translation>1961-05-04, puede quedar vacía</translation>
    </message>
    <message>
        <source>Phone number</source>
        <translation>Número de teléfono</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>puede quedar vacío</translation>
    </message>
    <message>
        <source>Leg lost</source>
        <translation>Pierna perdida</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>Leg that goes first on stairs (yours to choose, there is no default)</source>
        <translation>Pierna que va primero en las escaleras (la elige usted, no hay valor previo)</translation>
    </message>
    <message>
        <source>Leg that goes first on stairs</source>
        <translation>Pierna que va primero en las escaleras</translation>
    </message>
    <message>
        <source>Mobility level</source>
        <translation>Nivel de movilidad</translation>
    </message>
    <message>
        <source>Walking aid</source>
        <translation>Ayuda para andar</translation>
    </message>
    <message>
        <source>Conditions that change what is safe</source>
        <translation>Problemas de salud que cambian lo que es seguro</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Problema de salud</translation>
    </message>
    <message>
        <source>Asked: none of these</source>
        <translation>Preguntado: ninguno de estos</translation>
    </message>
    <message>
        <source>At home</source>
        <translation>En casa</translation>
    </message>
    <message>
        <source>Stairs and rails</source>
        <translation>Escaleras y pasamanos</translation>
    </message>
    <message>
        <source>Sturdy chairs without wheels</source>
        <translation>Sillas firmes sin ruedas</translation>
    </message>
    <message>
        <source>Ramp</source>
        <translation>Rampa</translation>
    </message>
    <message>
        <source>Chair on wheels</source>
        <translation>Silla con ruedas</translation>
    </message>
    <message>
        <source>Worktop or heavy table</source>
        <translation>Encimera o mesa pesada</translation>
    </message>
    <message>
        <source>Room to lie on the floor or a firm bed</source>
        <translation>Sitio para tumbarse en el suelo o en una cama firme</translation>
    </message>
    <message>
        <source>Someone within call</source>
        <translation>Alguien a quien llamar cerca</translation>
    </message>
    <message>
        <source>Can get up from the floor</source>
        <translation>Puede levantarse del suelo</translation>
    </message>
    <message>
        <source>Low vision</source>
        <translation>Baja visión</translation>
    </message>
    <message>
        <source>Hard of hearing</source>
        <translation>Oye mal</translation>
    </message>
    <message>
        <source>What I have not asked is not known</source>
        <translation>Lo que no pregunté no se sabe</translation>
    </message>
    <message>
        <source>For the program</source>
        <translation>Para el programa</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Huso horario</translation>
    </message>
    <message>
        <source>for example Europe/Berlin</source>
        <translation>por ejemplo Europe/Madrid</translation>
    </message>
    <message>
        <source>Saving …</source>
        <translation>Guardando …</translation>
    </message>
    <message>
        <source>Save record</source>
        <translation>Guardar la ficha</translation>
    </message>
    <message>
        <source>Do not save</source>
        <translation>No guardar</translation>
    </message>
</context>
<context>
    <name>PersonForm</name>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>both</source>
        <translation>ambas</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no, none yet</source>
        <translation>no, aún ninguna</translation>
    </message>
</context>
<context>
    <name>PersonPage</name>
    <message>
        <source>Reading …</source>
        <translation>Leyendo …</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Write the next programme</source>
        <translation>Escribir el programa siguiente</translation>
    </message>
    <message>
        <source>Write the first programme</source>
        <translation>Escribir el primer programa</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Lo que se hizo</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Hold order</source>
        <translation>Orden de suspensión</translation>
    </message>
    <message>
        <source>Pair a phone</source>
        <translation>Vincular un teléfono</translation>
    </message>
    <message>
        <source>Change the record</source>
        <translation>Cambiar la ficha</translation>
    </message>
    <message>
        <source>On hold</source>
        <translation>Suspendido</translation>
    </message>
    <message>
        <source>Hold on %1, by %2: %3</source>
        <translation>Suspensión de %1, por %2: %3</translation>
    </message>
    <message>
        <source>Lift this hold</source>
        <translation>Levantar esta suspensión</translation>
    </message>
    <message>
        <source>Lift the hold on %1</source>
        <translation>Levantar la suspensión de %1</translation>
    </message>
    <message>
        <source>Done of due, by week</source>
        <translation>Hechas de previstas, por semana</translation>
    </message>
    <message>
        <source>Programmes</source>
        <translation>Programas</translation>
    </message>
    <message>
        <source>None yet.</source>
        <translation>Aún ninguno.</translation>
    </message>
    <message>
        <source>Programme %1%2, %3 exercises, by %4</source>
        <translation>Programa %1%2, %3 ejercicios, por %4</translation>
    </message>
    <message>
        <source> (the newest)</source>
        <translation> (el más nuevo)</translation>
    </message>
    <message>
        <source>Programme %1</source>
        <translation>Programa %1</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Record, 1 thing not known</source>
        <translation>Ficha, 1 cosa sin saber</translation>
    </message>
    <message>
        <source>Record, %1 things not known</source>
        <translation>Ficha, %1 cosas sin saber</translation>
    </message>
    <message>
        <source>Phones</source>
        <translation>Teléfonos</translation>
    </message>
    <message>
        <source>None paired.</source>
        <translation>Ninguno vinculado.</translation>
    </message>
    <message>
        <source>Phones and therapists</source>
        <translation>Teléfonos y terapeutas</translation>
    </message>
    <message>
        <source>Who has access: phones and therapists</source>
        <translation>Quién tiene acceso: teléfonos y terapeutas</translation>
    </message>
    <message>
        <source>Who has access: phones</source>
        <translation>Quién tiene acceso: teléfonos</translation>
    </message>
    <message>
        <source>Who saw this record</source>
        <translation>Quién vio esta ficha</translation>
    </message>
    <message>
        <source>%1, access taken away</source>
        <translation>%1, acceso quitado</translation>
    </message>
    <message>
        <source>Paired %1; %2</source>
        <translation>Vinculado %1; %2</translation>
    </message>
    <message>
        <source>never heard from</source>
        <translation>nunca hubo contacto</translation>
    </message>
    <message>
        <source>last heard from %1</source>
        <translation>último contacto %1</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Lo ocurrido</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Documentos</translation>
    </message>
    <message>
        <source>Documents: handout, report, card, calendar, exports</source>
        <translation>Documentos: hoja, informe, tarjeta, calendario, exportaciones</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
</context>
<context>
    <name>PhonePane</name>
    <message>
        <source>What %1 will see, %2</source>
        <translation>Lo que verá %1, %2</translation>
    </message>
    <message>
        <source>The phone&apos;s screen: %1 %2 %3</source>
        <translation>La pantalla del teléfono: %1 %2 %3</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>Pause the preview</source>
        <translation>Pausar la vista previa</translation>
    </message>
    <message>
        <source>Play the preview in time</source>
        <translation>Reproducir la vista previa a su ritmo</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Beat before</source>
        <translation>Tiempo anterior</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Next beat</source>
        <translation>Tiempo siguiente</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Every beat, as the phone shows it</source>
        <translation>Cada tiempo, como lo muestra el teléfono</translation>
    </message>
    <message>
        <source>Beat %1: %2</source>
        <translation>Tiempo %1: %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Size of text on the phone</source>
        <translation>Tamaño del texto en el teléfono</translation>
    </message>
</context>
<context>
    <name>PhoneRow</name>
    <message>
        <source>%1, access taken away</source>
        <translation>%1, acceso quitado</translation>
    </message>
    <message>
        <source>Paired %1, never heard from since</source>
        <translation>Vinculado %1, sin contacto desde entonces</translation>
    </message>
    <message>
        <source>Paired %1, last heard from %2</source>
        <translation>Vinculado %1, último contacto %2</translation>
    </message>
    <message>
        <source>Paired %1, last heard from %2, version %3</source>
        <translation>Vinculado %1, último contacto %2, versión %3</translation>
    </message>
    <message>
        <source>Take access away</source>
        <translation>Quitar el acceso</translation>
    </message>
    <message>
        <source>Take access away from %1</source>
        <translation>Quitar el acceso a %1</translation>
    </message>
    <message>
        <source>Take access away from %1?</source>
        <translation>¿Quitar el acceso a %1?</translation>
    </message>
    <message>
        <source>From this moment it gets nothing from the clinic, also no hold order and no message, and the clinic gets nothing from it. The programme stays on it. What it has not sent yet stays on it too, and comes when the phone is paired again. To give access back, pair it anew.</source>
        <translation>Desde este momento no recibe nada de la clínica, tampoco órdenes de suspensión ni mensajes, y la clínica no recibe nada de él. El programa se queda en él. Lo que aún no ha enviado también, y llega cuando el teléfono se vincula otra vez. Para devolver el acceso, vincúlelo de nuevo.</translation>
    </message>
    <message>
        <source>Yes, this phone is out</source>
        <translation>Sí, este teléfono queda fuera</translation>
    </message>
    <message>
        <source>No, leave it</source>
        <translation>No, dejarlo</translation>
    </message>
</context>
<context>
    <name>Picture</name>
    <message>
        <source>This file is no picture that can be read.</source>
        <translation>Este archivo no es una imagen que se pueda leer.</translation>
    </message>
    <message>
        <source>This picture cannot be made small enough. Take one with less in it.</source>
        <translation>Esta imagen no se puede reducir lo suficiente. Use una con menos cosas.</translation>
    </message>
    <message>
        <source>This file cannot be opened. Look at its name and place.</source>
        <translation>Este archivo no se puede abrir. Mire su nombre y su lugar.</translation>
    </message>
    <message>
        <source>This clip is larger than 16 MiB. Take a shorter one, or save it smaller.</source>
        <translation>Este vídeo ocupa más de 16 MiB. Use uno más corto o guárdelo más pequeño.</translation>
    </message>
</context>
<context>
    <name>PracticeMap</name>
    <message>
        <source>pain %1 before, %2 after</source>
        <translation>dolor %1 antes, %2 después</translation>
    </message>
    <message>
        <source>pain %1 after</source>
        <translation>dolor %1 después</translation>
    </message>
    <message>
        <source>pain %1 before, not rated after</source>
        <translation>dolor %1 antes, sin valorar después</translation>
    </message>
    <message>
        <source>pain not rated</source>
        <translation>dolor sin valorar</translation>
    </message>
    <message>
        <source>set %1: </source>
        <translation>serie %1: </translation>
    </message>
    <message>
        <source>set %1 %2: </source>
        <translation>serie %1 %2: </translation>
    </message>
    <message>
        <source>left out or stopped: %1</source>
        <translation>omitido o parado: %1</translation>
    </message>
    <message>
        <source> (&quot;%1&quot;)</source>
        <translation> (&quot;%1&quot;)</translation>
    </message>
    <message>
        <source>%1 of %2 times</source>
        <translation>%1 de %2 veces</translation>
    </message>
    <message>
        <source>, held %1 of %2 s</source>
        <translation>, mantenido %1 de %2 s</translation>
    </message>
    <message>
        <source>, %1 holds begun again</source>
        <translation>, %1 veces empezado de nuevo</translation>
    </message>
    <message>
        <source>effort %1 of 10</source>
        <translation>esfuerzo %1 de 10</translation>
    </message>
    <message>
        <source>effort not rated</source>
        <translation>esfuerzo sin valorar</translation>
    </message>
    <message>
        <source>: %1</source>
        <translation>: %1</translation>
    </message>
    <message>
        <source>, interrupted and taken up again once</source>
        <translation>, interrumpida y retomada una vez</translation>
    </message>
    <message>
        <source>, interrupted and taken up again %1 times</source>
        <translation>, interrumpida y retomada %1 veces</translation>
    </message>
    <message>
        <source>Told later, on %1, and not timed; programme %2</source>
        <translation>Contada después, el %1, y no cronometrada; programa %2</translation>
    </message>
    <message>
        <source>Begun %1, %2 min, timed by the phone, programme %3</source>
        <translation>Empezada %1, %2 min, cronometrada por el teléfono, programa %3</translation>
    </message>
</context>
<context>
    <name>PracticePaused</name>
    <message>
        <source>Paused</source>
        <translation>En pausa</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Go on, slower</source>
        <translation>Seguir, más despacio</translation>
    </message>
    <message>
        <source>Say it again</source>
        <translation>Repetir</translation>
    </message>
    <message>
        <source>Leave this exercise out</source>
        <translation>Dejar este ejercicio</translation>
    </message>
</context>
<context>
    <name>PracticeRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>They wrote: &quot;%1&quot;</source>
        <translation>Escribió: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Times in doubt: %1</source>
        <translation>Horas dudosas: %1</translation>
    </message>
</context>
<context>
    <name>PracticeView</name>
    <message>
        <source>Exercise %L1 of %L2</source>
        <translation>Ejercicio %L1 de %L2</translation>
    </message>
    <message>
        <source>%L1 of %L2</source>
        <translation>%L1 de %L2</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Done, go on</source>
        <translation>Hecho, seguir</translation>
    </message>
    <message>
        <source>Longer rest</source>
        <translation>Más descanso</translation>
    </message>
    <message>
        <source>Go on now</source>
        <translation>Seguir ya</translation>
    </message>
</context>
<context>
    <name>ProblemWords</name>
    <message>
        <source>The hub does not answer. Nothing was changed there as far as this desk knows. Check the network, then try again.</source>
        <translation>El hub no responde. Que este puesto sepa, allí no se cambió nada. Compruebe la red e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The hub does not know this sign-in any more. Sign in again; drafts are kept.</source>
        <translation>El hub ya no conoce esta sesión. Entre de nuevo; los borradores se guardan.</translation>
    </message>
    <message>
        <source>Your role may not do this. Ask whoever runs the clinic&apos;s hub.</source>
        <translation>Su papel no puede hacer esto. Pregunte a quien lleva el hub de la clínica.</translation>
    </message>
    <message>
        <source>Somebody changed it meanwhile. Look at the newest one and do it again; what you wrote is kept.</source>
        <translation>Alguien lo cambió entretanto. Mire lo más nuevo y hágalo otra vez; lo que escribió se guarda.</translation>
    </message>
    <message>
        <source>Too many tries or too much at once. Wait a minute, then try again.</source>
        <translation>Demasiados intentos o demasiado a la vez. Espere un minuto e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The hub does not know it. Go back to the list and open it again.</source>
        <translation>El hub no lo conoce. Vuelva a la lista y ábralo otra vez.</translation>
    </message>
    <message>
        <source>Could not %1.</source>
        <translation>No se pudo %1.</translation>
    </message>
    <message>
        <source> The hub says: %1</source>
        <translation> El hub dice: %1</translation>
    </message>
    <message>
        <source>The hub&apos;s disk is full. Nothing was kept; tell whoever runs it.</source>
        <translation>El disco del hub está lleno. No se guardó nada; avise a quien lleva el hub.</translation>
    </message>
</context>
<context>
    <name>ProgressPage</name>
    <message>
        <source>Progress: %1</source>
        <translation>Progreso: %1</translation>
    </message>
    <message>
        <source>A draft is yours to change. The person gets nothing before you sign.</source>
        <translation>El borrador es suyo para cambiarlo. La persona no recibe nada antes de que usted firme.</translation>
    </message>
    <message>
        <source>Now: %1.</source>
        <translation>Ahora: %1.</translation>
    </message>
    <message>
        <source>for: %1</source>
        <translation>a favor: %1</translation>
    </message>
    <message>
        <source>against: %1</source>
        <translation>en contra: %1</translation>
    </message>
</context>
<context>
    <name>ReachedRow</name>
    <message>
        <source>Sent</source>
        <translation>Enviado</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Llegado</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>%1: not yet</source>
        <translation>%1: aún no</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>RecordRows</name>
    <message>
        <source>Lost, %1</source>
        <translation>Pérdida, %1</translation>
    </message>
    <message>
        <source>Prosthesis, %1</source>
        <translation>Prótesis, %1</translation>
    </message>
    <message>
        <source>knee: %1; foot: %2</source>
        <translation>rodilla: %1; pie: %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Goes first on stairs</source>
        <translation>Va primero en las escaleras</translation>
    </message>
    <message>
        <source>Mobility level</source>
        <translation>Nivel de movilidad</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Problemas de salud</translation>
    </message>
    <message>
        <source>asked, none of the list</source>
        <translation>preguntado, ninguno de la lista</translation>
    </message>
    <message>
        <source>Walking aid</source>
        <translation>Ayuda para andar</translation>
    </message>
    <message>
        <source>Gets up from the floor</source>
        <translation>Se levanta del suelo</translation>
    </message>
    <message>
        <source>Stairs at home</source>
        <translation>Escaleras en casa</translation>
    </message>
    <message>
        <source>Ramp</source>
        <translation>Rampa</translation>
    </message>
    <message>
        <source>Sturdy chairs</source>
        <translation>Sillas firmes</translation>
    </message>
    <message>
        <source>Chair on wheels</source>
        <translation>Silla con ruedas</translation>
    </message>
    <message>
        <source>Worktop or heavy table</source>
        <translation>Encimera o mesa pesada</translation>
    </message>
    <message>
        <source>Room on the floor</source>
        <translation>Sitio en el suelo</translation>
    </message>
    <message>
        <source>Someone near</source>
        <translation>Alguien cerca</translation>
    </message>
    <message>
        <source>Low vision</source>
        <translation>Baja visión</translation>
    </message>
    <message>
        <source>Hard of hearing</source>
        <translation>Oye mal</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Estatura</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>Language, zone</source>
        <translation>Idioma, huso</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacimiento</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
</context>
<context>
    <name>RemarkPane</name>
    <message>
        <source>%1: &quot;%2&quot;</source>
        <translation>%1: «%2»</translation>
    </message>
    <message>
        <source>Note: &quot;%1&quot;</source>
        <translation>Nota: «%1»</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Take the note back: %1</source>
        <translation>Retirar la nota: %1</translation>
    </message>
    <message>
        <source>Write a note about a day</source>
        <translation>Escribir una nota sobre un día</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Escribir una nota</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Day, YYYY-MM-DD</source>
        <translation>Día, AAAA-MM-DD</translation>
    </message>
    <message>
        <source>Note for colleagues; the person does not get it</source>
        <translation>Nota para colegas; la persona no la recibe</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Guardar la nota</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
</context>
<context>
    <name>ScalePicker</name>
    <message>
        <source>0 is %1. 10 is %2.</source>
        <translation>0 es %1. 10 es %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>SignInPage</name>
    <message>
        <source>Sign in to your clinic&apos;s hub</source>
        <translation>Entre en el hub de su clínica</translation>
    </message>
    <message>
        <source>Hub address</source>
        <translation>Dirección del hub</translation>
    </message>
    <message>
        <source>for example hub.clinic.example:7443</source>
        <translation>por ejemplo hub.clinica.example:7443</translation>
    </message>
    <message>
        <source>Hub fingerprint</source>
        <translation>Huella del hub</translation>
    </message>
    <message>
        <source>64 letters and digits, from whoever runs the hub</source>
        <translation>64 letras y cifras, de quien lleva el hub</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>User name</source>
        <translation>Nombre de usuario</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>Code of the second factor</source>
        <translation>Código del segundo factor</translation>
    </message>
    <message>
        <source>six digits, from your code app</source>
        <translation>seis cifras, de su aplicación de códigos</translation>
    </message>
    <message>
        <source>Signing in …</source>
        <translation>Entrando …</translation>
    </message>
    <message>
        <source>Sign in</source>
        <translation>Entrar</translation>
    </message>
    <message>
        <source>The fingerprint proves that this is your clinic&apos;s hub. It is kept on this desk; your password is not.</source>
        <translation>La huella prueba que este es el hub de su clínica. Se guarda en este puesto; su contraseña no.</translation>
    </message>
</context>
<context>
    <name>SignPage</name>
    <message>
        <source>Programme %1, before you sign</source>
        <translation>Programa %1, antes de firmar</translation>
    </message>
    <message>
        <source>From %1 to %2. %3.</source>
        <translation>Del %1 al %2. %3.</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>· %1</source>
        <translation>· %1</translation>
    </message>
    <message>
        <source>The exercises</source>
        <translation>Los ejercicios</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>What is new, for %1 to read</source>
        <translation>Lo nuevo, para que lo lea %1</translation>
    </message>
    <message>
        <source>What is new, for the person to read</source>
        <translation>Lo nuevo, para que lo lea la persona</translation>
    </message>
    <message>
        <source>Signing …</source>
        <translation>Firmando …</translation>
    </message>
    <message>
        <source>Sign for %1: %2</source>
        <translation>Firmar para %1: %2</translation>
    </message>
    <message>
        <source>Not to be signed yet. %1</source>
        <translation>Aún no se puede firmar. %1</translation>
    </message>
    <message>
        <source>Go on writing</source>
        <translation>Seguir escribiendo</translation>
    </message>
</context>
<context>
    <name>StartPane</name>
    <message>
        <source>Start from</source>
        <translation>Empezar desde</translation>
    </message>
    <message>
        <source>Its exercises, days, advice and cards, to change what has to change.</source>
        <translation>Sus ejercicios, días, consejos y fichas, para cambiar lo que haga falta.</translation>
    </message>
    <message>
        <source>No template is made for this level and mobility.</source>
        <translation>Ninguna plantilla está hecha para este nivel y movilidad.</translation>
    </message>
    <message>
        <source>Only templates for this person</source>
        <translation>Solo plantillas para esta persona</translation>
    </message>
    <message>
        <source>Templates for others too (%1)</source>
        <translation>También plantillas para otros (%1)</translation>
    </message>
    <message>
        <source>What suits this person</source>
        <translation>Lo adecuado para esta persona</translation>
    </message>
    <message>
        <source>Exercises that no rule speaks against, by purpose; one click adds one.</source>
        <translation>Ejercicios a los que ninguna regla se opone, por propósito; un clic añade uno.</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>An empty programme, and the whole catalogue to pick from.</source>
        <translation>Un programa vacío, y todo el catálogo para elegir.</translation>
    </message>
    <message>
        <source>Keep this draft as a template</source>
        <translation>Guardar este borrador como plantilla</translation>
    </message>
    <message>
        <source>Name of the template</source>
        <translation>Nombre de la plantilla</translation>
    </message>
    <message>
        <source>For example: first weeks, above the knee, at our clinic</source>
        <translation>Por ejemplo: primeras semanas, como aquí</translation>
    </message>
    <message>
        <source>Keep for the clinic</source>
        <translation>Guardar para la clínica</translation>
    </message>
    <message>
        <source>Whatever you choose is put to the safety rules for this person. Pain limits, and wearing time that is planned already, stay as they are.</source>
        <translation>Lo que elija pasa por las reglas de seguridad de esta persona. Los límites de dolor, y el tiempo de uso ya planeado, quedan como están.</translation>
    </message>
    <message>
        <source>Asked for in the file this person came with</source>
        <translation>Lo que pide el archivo con que vino esta persona</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What the file asks for</source>
        <translation>Lo que pide el archivo</translation>
    </message>
    <message>
        <source>For everybody in the clinic: exercises, doses, days, cards, measures and wearing time. Nothing that you wrote to this person, no reasons, no pictures, no limits.</source>
        <translation>Para toda la clínica: ejercicios, dosis, días, fichas, medidas y tiempo de uso. Nada de lo que escribió a esta persona, ni motivos, ni fotos, ni límites.</translation>
    </message>
</context>
<context>
    <name>StartRow</name>
    <message>
        <source>Start from %1</source>
        <translation>Empezar desde %1</translation>
    </message>
</context>
<context>
    <name>StepField</name>
    <message>
        <source>Less: %1</source>
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
</context>
<context>
    <name>StopButton</name>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>SuggestionList</name>
    <message>
        <source>What suits this person</source>
        <translation>Lo adecuado para esta persona</translation>
    </message>
    <message>
        <source>No exercise is free of questions for this person. The catalogue says what each one needs.</source>
        <translation>Ningún ejercicio está libre de preguntas para esta persona. El catálogo dice qué necesita cada uno.</translation>
    </message>
    <message>
        <source>Usual for the level and the mobility, and no rule asks or refuses. Each comes with its starting dose.</source>
        <translation>Habituales para el nivel y la movilidad, y ninguna regla pregunta ni rechaza. Cada uno viene con su dosis inicial.</translation>
    </message>
</context>
<context>
    <name>SuggestionRow</name>
    <message>
        <source>In the programme: %1</source>
        <translation>En el programa: %1</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir %1</translation>
    </message>
    <message>
        <source>%1 (in the programme)</source>
        <translation>%1 (en el programa)</translation>
    </message>
</context>
<context>
    <name>TemplateRow</name>
    <message>
        <source>Hide sources</source>
        <translation>Ocultar fuentes</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Cambiar nombre</translation>
    </message>
    <message>
        <source>Rename the template %1</source>
        <translation>Cambiar el nombre de la plantilla %1</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Withdraw the template %1</source>
        <translation>Retirar la plantilla %1</translation>
    </message>
    <message>
        <source>New name</source>
        <translation>Nombre nuevo</translation>
    </message>
    <message>
        <source>New name of the template %1</source>
        <translation>Nombre nuevo de la plantilla %1</translation>
    </message>
    <message>
        <source>Keep the name</source>
        <translation>Guardar el nombre</translation>
    </message>
    <message>
        <source>Withdraw it for everybody in the clinic? Programmes that were begun from it stay as they are.</source>
        <translation>¿Retirarla para toda la clínica? Los programas que empezaron desde ella se quedan como están.</translation>
    </message>
    <message>
        <source>Yes, withdraw it</source>
        <translation>Sí, retirarla</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>No, dejarla</translation>
    </message>
</context>
<context>
    <name>TimelinePage</name>
    <message>
        <source>What happened: %1</source>
        <translation>Lo ocurrido: %1</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué mirar</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Aún nada.</translation>
    </message>
</context>
<context>
    <name>WaitForm</name>
    <message>
        <source>%1 can wait. Colleagues see this; anything new or more urgent brings the row back at once.</source>
        <translation>%1 puede esperar. Los colegas lo ven; cualquier cosa nueva o más urgente devuelve la fila al momento.</translation>
    </message>
    <message>
        <source>Why it can wait</source>
        <translation>Por qué puede esperar</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Let it wait</source>
        <translation>Dejarlo esperar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Cancel waiting</source>
        <translation>Cancelar la espera</translation>
    </message>
</context>
<context>
    <name>WearPlanForm</name>
    <message>
        <source>Wear plan</source>
        <translation>Plan de uso</translation>
    </message>
    <message>
        <source>Begin the wear plan from: %1</source>
        <translation>Empezar el plan de uso desde: %1</translation>
    </message>
    <message>
        <source>No wear plan</source>
        <translation>Sin plan de uso</translation>
    </message>
    <message>
        <source>%1. %2 Source: %3</source>
        <translation>%1. %2 Fuente: %3</translation>
    </message>
    <message>
        <source>Step %1: %2%3</source>
        <translation>Paso %1: %2%3</translation>
    </message>
    <message>
        <source>, begins here</source>
        <translation>, empieza aquí</translation>
    </message>
    <message>
        <source>Times a day</source>
        <translation>Veces al día</translation>
    </message>
    <message>
        <source>Times a day, step %1</source>
        <translation>Veces al día, paso %1</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Cada una</translation>
    </message>
    <message>
        <source>Minutes each, step %1</source>
        <translation>Minutos cada una, paso %1</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Good days before the next</source>
        <translation>Días buenos antes del siguiente</translation>
    </message>
    <message>
        <source>Good days, step %1</source>
        <translation>Días buenos, paso %1</translation>
    </message>
    <message>
        <source>Begin here</source>
        <translation>Empezar aquí</translation>
    </message>
    <message>
        <source>Begin at step %1</source>
        <translation>Empezar en el paso %1</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Step %1 once more</source>
        <translation>Paso %1 otra vez</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Leave out step %1</source>
        <translation>Omitir el paso %1</translation>
    </message>
    <message>
        <source>Off between two times, at least</source>
        <translation>Quitada entre dos veces, al menos</translation>
    </message>
    <message>
        <source>Red skin may stay</source>
        <translation>La piel roja puede durar</translation>
    </message>
    <message>
        <source>When it stays red for longer</source>
        <translation>Cuando sigue roja más tiempo</translation>
    </message>
    <message>
        <source>Leave it off and call</source>
        <translation>Dejarla quitada y llamar</translation>
    </message>
    <message>
        <source>No more than now, and call</source>
        <translation>No más que ahora, y llamar</translation>
    </message>
    <message>
        <source>Published: %1</source>
        <translation>Publicado: %1</translation>
    </message>
    <message>
        <source>To the person, about wearing</source>
        <translation>Para la persona, sobre el uso</translation>
    </message>
    <message>
        <source>To be measured by the end</source>
        <translation>Por medir antes del final</translation>
    </message>
    <message>
        <source>Measure by the end</source>
        <translation>Medir antes del final</translation>
    </message>
</context>
<context>
    <name>WeekMinutes</name>
    <message>
        <source>Mo</source>
        <translation>lu</translation>
    </message>
    <message>
        <source>Tu</source>
        <translation>ma</translation>
    </message>
    <message>
        <source>We</source>
        <translation>mi</translation>
    </message>
    <message>
        <source>Th</source>
        <translation>ju</translation>
    </message>
    <message>
        <source>Fr</source>
        <translation>vi</translation>
    </message>
    <message>
        <source>Sa</source>
        <translation>sá</translation>
    </message>
    <message>
        <source>Su</source>
        <translation>do</translation>
    </message>
    <message>
        <source>Minutes a day: %1</source>
        <translation>Minutos al día: %1</translation>
    </message>
</context>
<context>
    <name>WholeEditor</name>
    <message>
        <source>Dates, advice, limits</source>
        <translation>Fechas, consejos, límites</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>2026-11-25</source>
        <translation>2026-11-25</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>2026-12-22</source>
        <translation>2026-12-22</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 semana</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 semanas</translation>
    </message>
    <message>
        <source>Length: %1</source>
        <translation>Duración: %1</translation>
    </message>
    <message>
        <source>whole programme</source>
        <translation>todo el programa</translation>
    </message>
    <message>
        <source>General advice</source>
        <translation>Consejos generales</translation>
    </message>
    <message>
        <source>Shown and printed above the exercises</source>
        <translation>Se muestran y se imprimen encima de los ejercicios</translation>
    </message>
    <message>
        <source>Against the last programme</source>
        <translation>Frente al último programa</translation>
    </message>
    <message>
        <source>What a full report would lack (CERT)</source>
        <translation>Qué le faltaría a un informe completo (CERT)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Escribirlo</translation>
    </message>
    <message>
        <source>Write it: %1</source>
        <translation>Escribirlo: %1</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Test clock: the date is shifted</source>
        <translation>Reloj de prueba: la fecha está cambiada</translation>
    </message>
</context>
<context>
    <name>newel::desk::AccessModel</name>
    <message>
        <source>a phone</source>
        <translation>un teléfono</translation>
    </message>
    <message>
        <source>Reading who has access</source>
        <translation>Leyendo quién tiene acceso</translation>
    </message>
    <message>
        <source>read who has access</source>
        <translation>leer quién tiene acceso</translation>
    </message>
    <message>
        <source>Changing who looks after the person</source>
        <translation>Cambiando quién atiende a la persona</translation>
    </message>
    <message>
        <source>change who looks after the person</source>
        <translation>cambiar quién atiende a la persona</translation>
    </message>
    <message>
        <source>Taking the phone&apos;s access away</source>
        <translation>Quitando el acceso al teléfono</translation>
    </message>
    <message>
        <source>take this phone&apos;s access away</source>
        <translation>quitar el acceso a este teléfono</translation>
    </message>
</context>
<context>
    <name>newel::desk::AccountsModel</name>
    <message>
        <source>switched off</source>
        <translation>desactivada</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en uso</translation>
    </message>
    <message>
        <source>first password too old</source>
        <translation>primera contraseña caducada</translation>
    </message>
    <message>
        <source>first password, good until %1</source>
        <translation>primera contraseña, vale hasta %1</translation>
    </message>
    <message>
        <source>Reading the accounts</source>
        <translation>Leyendo las cuentas</translation>
    </message>
    <message>
        <source>read the accounts</source>
        <translation>leer las cuentas</translation>
    </message>
    <message>
        <source>Changing the account</source>
        <translation>Cambiando la cuenta</translation>
    </message>
    <message>
        <source>First password for %1. It is shown only now: tell it or write it down for them. Good until %2; at the first sign-in they choose their own.</source>
        <translation>Primera contraseña de %1. Se muestra solo ahora: dígala o anótela. Vale hasta %2; en la primera entrada elige la suya.</translation>
    </message>
    <message>
        <source>Somebody has this user name already. Choose another.</source>
        <translation>Alguien ya tiene este nombre de usuario. Elija otro.</translation>
    </message>
    <message>
        <source>2 to 60 small letters, digits, dots, hyphens, underscores or @.</source>
        <translation>De 2 a 60 minúsculas, cifras, puntos, guiones, guiones bajos o @.</translation>
    </message>
    <message>
        <source>Type the name that colleagues see.</source>
        <translation>Escriba el nombre que ven los colegas.</translation>
    </message>
    <message>
        <source>change this account</source>
        <translation>cambiar esta cuenta</translation>
    </message>
    <message>
        <source>Account changed. It has to sign in again.</source>
        <translation>Cuenta cambiada. Tiene que entrar de nuevo.</translation>
    </message>
    <message>
        <source>make this account</source>
        <translation>crear esta cuenta</translation>
    </message>
    <message>
        <source>Account made.</source>
        <translation>Cuenta creada.</translation>
    </message>
    <message>
        <source>switch this account off</source>
        <translation>desactivar esta cuenta</translation>
    </message>
    <message>
        <source>switch this account on</source>
        <translation>activar esta cuenta</translation>
    </message>
    <message>
        <source>Account switched off.</source>
        <translation>Cuenta desactivada.</translation>
    </message>
    <message>
        <source>Account switched on.</source>
        <translation>Cuenta activada.</translation>
    </message>
    <message>
        <source>make a first password</source>
        <translation>crear una primera contraseña</translation>
    </message>
    <message>
        <source>A new first password is made; the old password is no longer good.</source>
        <translation>Se creó una nueva primera contraseña; la anterior ya no vale.</translation>
    </message>
    <message>
        <source>take the second factor away</source>
        <translation>quitar el segundo factor</translation>
    </message>
    <message>
        <source>The second factor is taken away.</source>
        <translation>Se quitó el segundo factor.</translation>
    </message>
</context>
<context>
    <name>newel::desk::AuditModel</name>
    <message>
        <source>somebody unknown</source>
        <translation>alguien desconocido</translation>
    </message>
    <message>
        <source>an account or phone that is gone</source>
        <translation>una cuenta o un teléfono que ya no está</translation>
    </message>
    <message>
        <source>a person who is gone</source>
        <translation>una persona que ya no está</translation>
    </message>
    <message>
        <source>Reading the accounts</source>
        <translation>Leyendo las cuentas</translation>
    </message>
    <message>
        <source>No account has this name.</source>
        <translation>Ninguna cuenta tiene este nombre.</translation>
    </message>
    <message>
        <source>More than one account fits: %1</source>
        <translation>Encaja más de una cuenta: %1</translation>
    </message>
    <message>
        <source>Type a day like 2026-11-25.</source>
        <translation>Escriba un día como 2026-11-25.</translation>
    </message>
    <message>
        <source>This day is before the first one.</source>
        <translation>Este día es anterior al primero.</translation>
    </message>
    <message>
        <source>Reading the audit trail</source>
        <translation>Leyendo el registro de auditoría</translation>
    </message>
    <message>
        <source>read the audit trail</source>
        <translation>leer el registro de auditoría</translation>
    </message>
    <message>
        <source>Checking the chain</source>
        <translation>Comprobando la cadena</translation>
    </message>
    <message>
        <source>check the chain</source>
        <translation>comprobar la cadena</translation>
    </message>
    <message>
        <source>The chain does not hold: %1. Tell whoever runs the hub, and keep its store as it is.</source>
        <translation>La cadena no se sostiene: %1. Avise a quien lleva el hub y deje sus datos como están.</translation>
    </message>
    <message>
        <source>The chain of %1 lines holds. Head: %2</source>
        <translation>La cadena de %1 líneas se sostiene. Cabeza: %2</translation>
    </message>
</context>
<context>
    <name>newel::desk::CaseloadModel</name>
    <message>
        <source>The record could not be read as a whole. Open it and look.</source>
        <translation>La ficha no se pudo leer entera. Ábrala y mire.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>sin datos</translation>
    </message>
    <message>
        <source>Done of due, week by week, oldest first: %1</source>
        <translation>Hechas de previstas, semana a semana, la más antigua primero: %1</translation>
    </message>
    <message>
        <source>Waits until %1: %2 (%3)</source>
        <translation>Espera hasta %1: %2 (%3)</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Any reason</source>
        <translation>Cualquier motivo</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation>1 persona</translation>
    </message>
    <message>
        <source>%L1 people</source>
        <translation>%L1 personas</translation>
    </message>
    <message>
        <source> · %L1 shown</source>
        <translation> · %L1 a la vista</translation>
    </message>
    <message>
        <source> · %L1 not heard from for %2 days</source>
        <translation> · %L1 sin contacto desde hace %2 días</translation>
    </message>
    <message>
        <source> · all paired phones heard from</source>
        <translation> · contacto con todos los teléfonos vinculados</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1 hasta %2</translation>
    </message>
    <message>
        <source>Reading the caseload</source>
        <translation>Leyendo la lista de personas</translation>
    </message>
    <message>
        <source>read the caseload</source>
        <translation>leer la lista de personas</translation>
    </message>
    <message>
        <source>Reading a record</source>
        <translation>Leyendo una ficha</translation>
    </message>
    <message>
        <source>New: %1. %2</source>
        <translation>Nuevo: %1. %2</translation>
    </message>
    <message>
        <source>Say in a few words why it can wait: colleagues see them.</source>
        <translation>Diga en pocas palabras por qué puede esperar: los colegas las ven.</translation>
    </message>
    <message>
        <source>Saving</source>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>This cannot wait any more: something new came. Read again.</source>
        <translation>Esto ya no puede esperar: llegó algo nuevo. Lea de nuevo.</translation>
    </message>
    <message>
        <source>save that it can wait</source>
        <translation>guardar que puede esperar</translation>
    </message>
</context>
<context>
    <name>newel::desk::CatalogueListModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>newel::desk::ClinicSettingsModel</name>
    <message>
        <source>Saving the settings</source>
        <translation>Guardando los ajustes</translation>
    </message>
    <message>
        <source>save the settings</source>
        <translation>guardar los ajustes</translation>
    </message>
    <message>
        <source>Asking for the last backup</source>
        <translation>Preguntando por la última copia</translation>
    </message>
    <message>
        <source>Asking the hub …</source>
        <translation>Preguntando al hub …</translation>
    </message>
    <message>
        <source>ask for the last backup</source>
        <translation>preguntar por la última copia</translation>
    </message>
    <message>
        <source>The database is copied with its own tools; newel-hub backed-up tells the clinic when.</source>
        <translation>La base de datos se copia con sus propias herramientas; newel-hub backed-up dice a la clínica cuándo.</translation>
    </message>
    <message>
        <source>newel-hub backup makes one while the hub is serving.</source>
        <translation>newel-hub backup hace una mientras el hub sirve.</translation>
    </message>
    <message>
        <source>No copy of the database was ever told of.</source>
        <translation>Nunca se ha comunicado una copia de la base de datos.</translation>
    </message>
    <message>
        <source>There was never a backup.</source>
        <translation>Nunca ha habido una copia de seguridad.</translation>
    </message>
    <message>
        <source>The database was last said to be copied %1 (%2).</source>
        <translation>Se dijo que la base de datos se copió por última vez %1 (%2).</translation>
    </message>
    <message>
        <source>Last made and checked %1 (%2).</source>
        <translation>Hecha y comprobada por última vez %1 (%2).</translation>
    </message>
</context>
<context>
    <name>newel::desk::DeskLock</name>
    <message>
        <source>This desk locks in %1 s. Press a key or move the pointer to stay.</source>
        <translation>Este puesto se bloquea en %1 s. Pulse una tecla o mueva el puntero para seguir.</translation>
    </message>
    <message>
        <source>Signing in</source>
        <translation>Entrando</translation>
    </message>
    <message>
        <source>unlock this desk</source>
        <translation>desbloquear este puesto</translation>
    </message>
    <message>
        <source>This is not the password. Type it again.</source>
        <translation>Esta no es la contraseña. Escríbala otra vez.</translation>
    </message>
</context>
<context>
    <name>newel::desk::DeskModel</name>
    <message>
        <source>Message sent.</source>
        <translation>Mensaje enviado.</translation>
    </message>
    <message>
        <source>Record saved.</source>
        <translation>Ficha guardada.</translation>
    </message>
    <message>
        <source>Programme %1 is signed and on its way to the phone.</source>
        <translation>El programa %1 está firmado y de camino al teléfono.</translation>
    </message>
    <message>
        <source>The hold is lifted.</source>
        <translation>La suspensión está levantada.</translation>
    </message>
    <message>
        <source>The hold order is sent. It counts when it shows as arrived.</source>
        <translation>La orden de suspensión está enviada. Vale cuando aparece como llegada.</translation>
    </message>
    <message>
        <source>Kept: %1. It is in the catalogue now.</source>
        <translation>Guardado: %1. Ya está en el catálogo.</translation>
    </message>
    <message>
        <source>Settings saved. Phones get them when they next reach the hub.</source>
        <translation>Ajustes guardados. Los teléfonos los reciben en su próximo contacto con el hub.</translation>
    </message>
    <message>
        <source>%1 has no access any more.</source>
        <translation>%1 ya no tiene acceso.</translation>
    </message>
    <message>
        <source>Caseload</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Programme</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>Find a person</source>
        <translation>Buscar una persona</translation>
    </message>
    <message>
        <source>Accounts</source>
        <translation>Cuentas</translation>
    </message>
    <message>
        <source>That record is not open to you any more. Drafts are kept on this desk.</source>
        <translation>Esa ficha ya no está abierta para usted. Los borradores se guardan en este puesto.</translation>
    </message>
    <message>
        <source>The second factor is in use from the next sign-in on.</source>
        <translation>El segundo factor se usa desde la próxima entrada.</translation>
    </message>
    <message>
        <source>The password is changed.</source>
        <translation>La contraseña está cambiada.</translation>
    </message>
    <message>
        <source>Nobody touched this desk for a while.</source>
        <translation>Nadie tocó este puesto durante un rato.</translation>
    </message>
    <message>
        <source>Listening to the hub</source>
        <translation>Escuchando al hub</translation>
    </message>
    <message>
        <source>Reading the clinic&apos;s exercises</source>
        <translation>Leyendo los ejercicios de la clínica</translation>
    </message>
    <message>
        <source>Staying signed in</source>
        <translation>Manteniendo la sesión</translation>
    </message>
    <message>
        <source>It was locked with the button or Ctrl and L.</source>
        <translation>Se bloqueó con el botón o con Ctrl y L.</translation>
    </message>
    <message>
        <source>Locking</source>
        <translation>Bloqueando</translation>
    </message>
    <message>
        <source>Your sign-in has ended at the hub. Sign in again to go on where you were.</source>
        <translation>Su sesión terminó en el hub. Entre de nuevo para seguir donde estaba.</translation>
    </message>
    <message>
        <source>Your sign-in ends in %1 s; then this desk locks. Nothing you have written is lost.</source>
        <translation>Su sesión termina en %1 s; después este puesto se bloquea. No se pierde nada de lo que escribió.</translation>
    </message>
    <message>
        <source>Opened by your written reason until %1. This is written into the audit trail, and whoever looks after %2 reads your reason.</source>
        <translation>Abierta por su motivo escrito hasta %1. Esto se escribe en el registro de auditoría, y quien atiende a %2 lee su motivo.</translation>
    </message>
    <message>
        <source>Open by your written reason: %1</source>
        <translation>Abierto por su motivo escrito: %1</translation>
    </message>
    <message>
        <source>Signing out</source>
        <translation>Saliendo</translation>
    </message>
    <message>
        <source>You are signed out.</source>
        <translation>Ha salido.</translation>
    </message>
    <message>
        <source>You are signed out here; the hub was not reached and ends it by itself.</source>
        <translation>Ha salido aquí; no se alcanzó el hub, que cierra la sesión por sí solo.</translation>
    </message>
</context>
<context>
    <name>newel::desk::DocumentsModel</name>
    <message>
        <source>Handout to take home</source>
        <translation>Hoja para llevar a casa</translation>
    </message>
    <message>
        <source>Progress report</source>
        <translation>Informe de progreso</translation>
    </message>
    <message>
        <source>Wallet card</source>
        <translation>Tarjeta de cartera</translation>
    </message>
    <message>
        <source>Practice times for a calendar</source>
        <translation>Horas de práctica para un calendario</translation>
    </message>
    <message>
        <source>Record for another system (FHIR)</source>
        <translation>Ficha para otro sistema (FHIR)</translation>
    </message>
    <message>
        <source>Tables (CSV)</source>
        <translation>Tablas (CSV)</translation>
    </message>
    <message>
        <source>Names may stand in what people wrote: keep it as you would the record.</source>
        <translation>En lo que alguien escribió puede haber nombres: guárdelo como guardaría la ficha.</translation>
    </message>
    <message>
        <source>It holds no name, and still it is about somebody: keep it as you would the record.</source>
        <translation>No lleva nombre y aun así trata de alguien: guárdelo como guardaría la ficha.</translation>
    </message>
    <message>
        <source>PDF. Each exercise in three pictures, how much, when to stop, whom to call, boxes to tick.</source>
        <translation>PDF. Cada ejercicio en tres dibujos, cuánto, cuándo parar, a quién llamar, casillas para marcar.</translation>
    </message>
    <message>
        <source>PDF for the record: what was asked and done, dose, pain, measures with their error, what changed.</source>
        <translation>PDF para la historia: lo pedido y lo hecho, dosis, dolor, medidas con su error, qué cambió.</translation>
    </message>
    <message>
        <source>PDF to cut out: whose limb, what is worn, whom to call, when to stop.</source>
        <translation>PDF para recortar: de quién, qué lleva puesto, a quién llamar, cuándo parar.</translation>
    </message>
    <message>
        <source>iCalendar file for the person&apos;s own calendar. Whoever sees the calendar reads the exercises.</source>
        <translation>Archivo iCalendar para el calendario de la persona. Quien vea el calendario lee los ejercicios.</translation>
    </message>
    <message>
        <source>iCalendar file for the person&apos;s own calendar. It says &quot;Practice&quot; and nothing else.</source>
        <translation>Archivo iCalendar para el calendario de la persona. Dice «Práctica» y nada más.</translation>
    </message>
    <message>
        <source>One file, HL7 FHIR R4, with the record&apos;s own id.</source>
        <translation>Un archivo, HL7 FHIR R4, con el identificador de la ficha.</translation>
    </message>
    <message>
        <source>A folder of tables for a spreadsheet or statistics.</source>
        <translation>Una carpeta de tablas para una hoja de cálculo o estadística.</translation>
    </message>
    <message>
        <source>One or two exercises a page</source>
        <translation>Uno o dos ejercicios por página</translation>
    </message>
    <message>
        <source>The same in large print</source>
        <translation>Lo mismo en letra grande</translation>
    </message>
    <message>
        <source>Short, several a page</source>
        <translation>Breve, varios por página</translation>
    </message>
    <message>
        <source>As the person reads (%1)</source>
        <translation>Como lee la persona (%1)</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>Carta (EE. UU.)</translation>
    </message>
    <message>
        <source>With what people wrote, and therapists&apos; names</source>
        <translation>Con lo que se escribió y los nombres de terapeutas</translation>
    </message>
    <message>
        <source>Say which exercises</source>
        <translation>Decir qué ejercicios</translation>
    </message>
    <message>
        <source>Claim the US physical activity profiles</source>
        <translation>Declarar los perfiles de actividad física de EE. UU.</translation>
    </message>
    <message>
        <source>A day is needed, like 2026-11-25.</source>
        <translation>Hace falta un día, como 2026-11-25.</translation>
    </message>
    <message>
        <source>A day is written like 2026-11-25.</source>
        <translation>Un día se escribe como 2026-11-25.</translation>
    </message>
    <message>
        <source>This is before the first day.</source>
        <translation>Es antes del primer día.</translation>
    </message>
    <message>
        <source>No record is open.</source>
        <translation>No hay ninguna ficha abierta.</translation>
    </message>
    <message>
        <source>There is no programme yet.</source>
        <translation>Aún no hay programa.</translation>
    </message>
    <message>
        <source>Choose a folder on this computer first.</source>
        <translation>Elija antes una carpeta de este equipo.</translation>
    </message>
    <message>
        <source>Making: %1, %2 %</source>
        <translation>Haciendo: %1, %2 %</translation>
    </message>
    <message>
        <source>Saving the document</source>
        <translation>Guardando el documento</translation>
    </message>
    <message>
        <source>%1 saved: %2</source>
        <translation>%1, guardado: %2</translation>
    </message>
    <message>
        <source>make this document</source>
        <translation>hacer este documento</translation>
    </message>
</context>
<context>
    <name>newel::desk::DoneModel</name>
    <message>
        <source>nothing due with data</source>
        <translation>nada previsto con datos</translation>
    </message>
    <message>
        <source>%1 of %2 · %3</source>
        <translation>%1 de %2 · %3</translation>
    </message>
    <message>
        <source>dose %1</source>
        <translation>dosis %1</translation>
    </message>
    <message>
        <source>count what was done</source>
        <translation>contar lo hecho</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Nothing was due yet that anybody has data for.</source>
        <translation>Aún no había nada previsto de lo que haya datos.</translation>
    </message>
    <message>
        <source>%1 of %2 due done, %3. With extra: %4. Dose: %5.</source>
        <translation>%1 de %2 previstas hechas, %3. Con lo de más: %4. Dosis: %5.</translation>
    </message>
    <message>
        <source>The phone was never heard from: there is no data.</source>
        <translation>Nunca hubo contacto con el teléfono: no hay datos.</translation>
    </message>
    <message>
        <source>Phone last heard from %1, %2. Later days have no data.</source>
        <translation>Último contacto con el teléfono %1, %2. Los días posteriores no tienen datos.</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>hace %1</translation>
    </message>
    <message>
        <source>, %1 of the dose</source>
        <translation>, %1 de la dosis</translation>
    </message>
    <message>
        <source>, told later</source>
        <translation>, contado después</translation>
    </message>
    <message>
        <source>, any day of the week counts</source>
        <translation>, vale cualquier día de la semana</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>nada previsto</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Semana del %1</translation>
    </message>
    <message>
        <source>Programme %1, %2 to %3</source>
        <translation>Programa %1, %2 a %3</translation>
    </message>
</context>
<context>
    <name>newel::desk::DraftModel</name>
    <message>
        <source>This draft was kept on this desk. &quot;Start from&quot; begins anew.</source>
        <translation>Este borrador se guardó en este puesto. &quot;Empezar desde&quot; empieza de nuevo.</translation>
    </message>
    <message>
        <source>Programme %1 was signed after this draft was begun. What is new is shown against it.</source>
        <translation>El programa %1 se firmó después de empezar este borrador. Lo nuevo se muestra frente a él.</translation>
    </message>
    <message>
        <source>A draft kept here could not be read and was set aside. This one begins from the last programme.</source>
        <translation>Un borrador guardado aquí no se pudo leer y se apartó. Este empieza desde el último programa.</translation>
    </message>
    <message>
        <source>This draft cannot be kept on this desk: %1. It is lost if the program ends now.</source>
        <translation>Este borrador no se puede guardar en este puesto: %1. Se pierde si el programa termina ahora.</translation>
    </message>
    <message>
        <source>Signing</source>
        <translation>Firmando</translation>
    </message>
    <message>
        <source>sign this programme</source>
        <translation>firmar este programa</translation>
    </message>
    <message>
        <source>the first programme</source>
        <translation>el primer programa</translation>
    </message>
    <message>
        <source>from programme %1</source>
        <translation>desde el programa %1</translation>
    </message>
    <message>
        <source>Type a day as 2026-11-25: year, month, day.</source>
        <translation>Escriba un día como 2026-11-25: año, mes, día.</translation>
    </message>
    <message>
        <source>The last day is before the first.</source>
        <translation>El último día es anterior al primero.</translation>
    </message>
    <message>
        <source>%1 min on the fullest day</source>
        <translation>%1 min en el día más lleno</translation>
    </message>
    <message>
        <source>%1, was %2</source>
        <translation>%1, antes %2</translation>
    </message>
    <message>
        <source>Nothing that the person does has changed.</source>
        <translation>No ha cambiado nada de lo que hace la persona.</translation>
    </message>
    <message>
        <source>The first programme: everything is new.</source>
        <translation>El primer programa: todo es nuevo.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 is blocked: %2</source>
        <translation>%1 está bloqueado: %2</translation>
    </message>
    <message>
        <source>%1 needs your reason: %2</source>
        <translation>%1 necesita su motivo: %2</translation>
    </message>
    <message>
        <source>The programme is blocked: %1</source>
        <translation>El programa está bloqueado: %1</translation>
    </message>
    <message>
        <source>The programme needs your reason: %1</source>
        <translation>El programa necesita su motivo: %1</translation>
    </message>
    <message>
        <source>The rules do not allow it.</source>
        <translation>Las reglas no lo permiten.</translation>
    </message>
    <message>
        <source>There is no exercise in it yet.</source>
        <translation>Aún no tiene ningún ejercicio.</translation>
    </message>
    <message>
        <source>First day: %1</source>
        <translation>Primer día: %1</translation>
    </message>
    <message>
        <source>Last day: %1</source>
        <translation>Último día: %1</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>%1 hasta ahora</translation>
    </message>
    <message>
        <source>Effort × minutes, week by week: %1.</source>
        <translation>Esfuerzo × minutos, semana a semana: %1.</translation>
    </message>
    <message>
        <source>%1 times nobody rated the effort; these are not in it.</source>
        <translation>%1 veces nadie valoró el esfuerzo; no están incluidas.</translation>
    </message>
    <message>
        <source>%1 of %2 lines of the reporting template are stated, %3 are missing, %4 cannot be known yet.</source>
        <translation>%1 de %2 líneas de la plantilla de informe están dichas, faltan %3, y %4 aún no pueden saberse.</translation>
    </message>
    <message>
        <source>Only the clinic can say it.</source>
        <translation>Solo la clínica puede decirlo.</translation>
    </message>
    <message>
        <source>and %1 more, under Dates, advice, limits</source>
        <translation>y %1 más, en Fechas, consejos, límites</translation>
    </message>
    <message>
        <source>Stop above %1 of 10</source>
        <translation>Parar por encima de %1 de 10</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Quitar: %1</translation>
    </message>
</context>
<context>
    <name>newel::desk::EntryListModel</name>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>newel::desk::EntryMediaModel</name>
    <message>
        <source>Fetching the photo …</source>
        <translation>Trayendo la foto …</translation>
    </message>
    <message>
        <source>fetch the photo or the clip</source>
        <translation>traer la foto o el vídeo</translation>
    </message>
    <message>
        <source>Sending to the hub …</source>
        <translation>Enviando al hub …</translation>
    </message>
    <message>
        <source>Sending a photo or a clip …</source>
        <translation>Enviando una foto o un vídeo …</translation>
    </message>
    <message>
        <source>send it to the hub</source>
        <translation>enviarlo al hub</translation>
    </message>
    <message>
        <source>The hub did not take it. Choose it again.</source>
        <translation>El hub no lo aceptó. Elíjalo otra vez.</translation>
    </message>
    <message>
        <source>Sending to the hub: %1 %</source>
        <translation>Enviando al hub: %1 %</translation>
    </message>
</context>
<context>
    <name>newel::desk::EntryModel</name>
    <message>
        <source>%1, about %2 min each time</source>
        <translation>%1, unos %2 min cada vez</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>A cualquier hora</translation>
    </message>
    <message>
        <source>Morning</source>
        <translation>Mañana</translation>
    </message>
    <message>
        <source>Afternoon</source>
        <translation>Tarde</translation>
    </message>
    <message>
        <source>Evening</source>
        <translation>Noche</translation>
    </message>
    <message>
        <source>One day at least.</source>
        <translation>Un día como mínimo.</translation>
    </message>
    <message>
        <source>Type times as 07:30. What is shown above is what counts.</source>
        <translation>Escriba las horas como 07:30. Vale lo que se muestra arriba.</translation>
    </message>
    <message>
        <source>Times must follow one another and not overlap.</source>
        <translation>Las horas deben ir una tras otra y no solaparse.</translation>
    </message>
    <message>
        <source>Support: %1</source>
        <translation>Apoyo: %1</translation>
    </message>
    <message>
        <source>Ladder: %1, %2</source>
        <translation>Escalera: %1, %2</translation>
    </message>
    <message>
        <source>Prosthesis: %1</source>
        <translation>Prótesis: %1</translation>
    </message>
    <message>
        <source>Sides: %1</source>
        <translation>Lados: %1</translation>
    </message>
</context>
<context>
    <name>newel::desk::FindModel</name>
    <message>
        <source>day of birth not given</source>
        <translation>día de nacimiento no indicado</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>nacimiento %1</translation>
    </message>
    <message>
        <source>Type the whole family name, two letters at least.</source>
        <translation>Escriba el apellido completo, dos letras como mínimo.</translation>
    </message>
    <message>
        <source>Looking for a person</source>
        <translation>Buscando a una persona</translation>
    </message>
    <message>
        <source>look for a person</source>
        <translation>buscar a una persona</translation>
    </message>
    <message>
        <source>Nobody here has exactly this family name.</source>
        <translation>Aquí nadie tiene exactamente este apellido.</translation>
    </message>
    <message>
        <source>%1 found.</source>
        <translation>%1 encontradas.</translation>
    </message>
    <message>
        <source>%1 found, and there may be more. Ask for the day of birth.</source>
        <translation>%1 encontradas, y puede haber más. Pregunte el día de nacimiento.</translation>
    </message>
    <message>
        <source>Write in some words why it cannot wait.</source>
        <translation>Escriba en unas palabras por qué no puede esperar.</translation>
    </message>
    <message>
        <source>This is too long. Say it in one or two sentences.</source>
        <translation>Es demasiado largo. Dígalo en una o dos frases.</translation>
    </message>
    <message>
        <source>Opening the record</source>
        <translation>Abriendo la ficha</translation>
    </message>
    <message>
        <source>open the record</source>
        <translation>abrir la ficha</translation>
    </message>
</context>
<context>
    <name>newel::desk::HoldModel</name>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>Choose at least one exercise, or everything.</source>
        <translation>Elija al menos un ejercicio, o todo.</translation>
    </message>
    <message>
        <source>Write to them why it may go on.</source>
        <translation>Escríbale por qué puede seguir.</translation>
    </message>
    <message>
        <source>Write to them why, in plain words.</source>
        <translation>Escríbale por qué, en palabras sencillas.</translation>
    </message>
    <message>
        <source>Lifting the hold</source>
        <translation>Levantando la suspensión</translation>
    </message>
    <message>
        <source>Sending the hold order</source>
        <translation>Enviando la orden de suspensión</translation>
    </message>
    <message>
        <source>lift the hold</source>
        <translation>levantar la suspensión</translation>
    </message>
    <message>
        <source>send the hold order</source>
        <translation>enviar la orden de suspensión</translation>
    </message>
    <message>
        <source> If it is urgent, phone them now.</source>
        <translation> Si es urgente, llame ahora por teléfono.</translation>
    </message>
</context>
<context>
    <name>newel::desk::ImportModel</name>
    <message>
        <source>Reading the file</source>
        <translation>Leyendo el archivo</translation>
    </message>
    <message>
        <source>Nothing was taken from %1. %2</source>
        <translation>No se tomó nada de %1. %2</translation>
    </message>
    <message>
        <source>given name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>family name</source>
        <translation>apellido</translation>
    </message>
    <message>
        <source>birth date</source>
        <translation>fecha de nacimiento</translation>
    </message>
    <message>
        <source>phone number</source>
        <translation>teléfono</translation>
    </message>
    <message>
        <source>language</source>
        <translation>idioma</translation>
    </message>
    <message>
        <source>From %1 nothing went into the form.</source>
        <translation>De %1 no pasó nada al formulario.</translation>
    </message>
    <message>
        <source>From %1 into the form: %2. Look at each.</source>
        <translation>De %1 al formulario: %2. Mire cada uno.</translation>
    </message>
</context>
<context>
    <name>newel::desk::ManyModel</name>
    <message>
        <source>%1 and %L2 more</source>
        <translation>%1 y %L2 más</translation>
    </message>
    <message>
        <source>Nobody is chosen.</source>
        <translation>No hay nadie elegido.</translation>
    </message>
    <message>
        <source>Write to them why, in plain words.</source>
        <translation>Escríbales por qué, en palabras sencillas.</translation>
    </message>
    <message>
        <source>Write something to them first.</source>
        <translation>Escríbales algo antes.</translation>
    </message>
    <message>
        <source>This is too long to send.</source>
        <translation>Es demasiado largo para enviarlo.</translation>
    </message>
    <message>
        <source>Say in a sentence what the photo or the clip shows.</source>
        <translation>Diga en una frase qué muestra la foto o el vídeo.</translation>
    </message>
    <message>
        <source>Sending a photo or a clip</source>
        <translation>Enviando una foto o un vídeo</translation>
    </message>
    <message>
        <source>Sending the hold order</source>
        <translation>Enviando la orden de suspensión</translation>
    </message>
    <message>
        <source>Sending the message</source>
        <translation>Enviando el mensaje</translation>
    </message>
    <message>
        <source>send the hold order</source>
        <translation>enviar la orden de suspensión</translation>
    </message>
    <message>
        <source>send it</source>
        <translation>enviarlo</translation>
    </message>
    <message>
        <source> If it is urgent, phone them now.</source>
        <translation> Si es urgente, llame ahora por teléfono.</translation>
    </message>
    <message>
        <source>Sending: %L1 of %L2 …</source>
        <translation>Enviando: %L1 de %L2 …</translation>
    </message>
    <message>
        <source>Sent to %L1 of %L2.</source>
        <translation>Enviado a %L1 de %L2.</translation>
    </message>
    <message>
        <source>Not arrived yet: %L1. Arrived, not seen: %L2. Seen: %L3.</source>
        <translation>Sin llegar: %L1. Llegó y no se ha visto: %L2. Visto: %L3.</translation>
    </message>
    <message>
        <source>Not sent: %L1.</source>
        <translation>Sin enviar: %L1.</translation>
    </message>
    <message>
        <source>not sent yet</source>
        <translation>aún sin enviar</translation>
    </message>
    <message>
        <source>sent, not arrived yet</source>
        <translation>enviado, aún no ha llegado</translation>
    </message>
    <message>
        <source>Looking how far it got</source>
        <translation>Mirando hasta dónde llegó</translation>
    </message>
    <message>
        <source>seen %1</source>
        <translation>visto %1</translation>
    </message>
    <message>
        <source>arrived %1, not seen yet</source>
        <translation>llegó %1, aún sin ver</translation>
    </message>
</context>
<context>
    <name>newel::desk::MeasuresModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 desde %2</translation>
    </message>
    <message>
        <source>smallest detectable change (90 %) %1, in %2. %3%4</source>
        <translation>menor cambio detectable (90 %) %1, en %2. %3%4</translation>
    </message>
    <message>
        <source> (worked out by formula)</source>
        <translation> (calculado con fórmula)</translation>
    </message>
    <message>
        <source>%1 (%2, in %3): %4. %5</source>
        <translation>%1 (%2, en %3): %4. %5</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>alcanzado</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no alcanzado</translation>
    </message>
    <message>
        <source>%1: %2, in %3. %4</source>
        <translation>%1: %2, en %3. %4</translation>
    </message>
    <message>
        <source>met</source>
        <translation>cumplido</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>no cumplido</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, with %1</source>
        <translation>, con %1</translation>
    </message>
    <message>
        <source>points</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>Type a number.</source>
        <translation>Escriba un número.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 y %2.</translation>
    </message>
    <message>
        <source>Year-month-day, for example 2026-11-25.</source>
        <translation>Año-mes-día, por ejemplo 2026-11-25.</translation>
    </message>
    <message>
        <source>That day is still to come.</source>
        <translation>Ese día aún no ha llegado.</translation>
    </message>
    <message>
        <source>%1 against the first one; %2.</source>
        <translation>%1 frente al primero; %2.</translation>
    </message>
    <message>
        <source>beyond error</source>
        <translation>más allá del error</translation>
    </message>
    <message>
        <source>within error</source>
        <translation>dentro del error</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>no se puede decir</translation>
    </message>
    <message>
        <source>The first of its kind.</source>
        <translation>El primero de su tipo.</translation>
    </message>
    <message>
        <source>Saving the measure</source>
        <translation>Guardando la medida</translation>
    </message>
    <message>
        <source>save the measure</source>
        <translation>guardar la medida</translation>
    </message>
</context>
<context>
    <name>newel::desk::NextStepModel</name>
    <message>
        <source>%1 of %2: %3, %4</source>
        <translation>%1 de %2: %3, %4</translation>
    </message>
    <message>
        <source>no rule</source>
        <translation>sin regla</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>la suya</translation>
    </message>
    <message>
        <source>Nobody is told when this may be ready for its next step.</source>
        <translation>Nadie recibe aviso de cuándo puede estar listo el paso siguiente.</translation>
    </message>
    <message>
        <source>Good practices in a row</source>
        <translation>Prácticas buenas seguidas</translation>
    </message>
    <message>
        <source>Goal of the last set (0: the dose)</source>
        <translation>Meta de la última serie (0: la dosis)</translation>
    </message>
    <message>
        <source>Repetitions over the goal</source>
        <translation>Repeticiones sobre la meta</translation>
    </message>
    <message>
        <source>Effort at most, of 10</source>
        <translation>Esfuerzo como mucho, de 10</translation>
    </message>
    <message>
        <source>Pain rises at most by, of 10</source>
        <translation>El dolor sube como mucho, de 10</translation>
    </message>
    <message>
        <source>Too hard ones that make a step back (0: never)</source>
        <translation>Demasiado duras para un paso atrás (0: nunca)</translation>
    </message>
    <message>
        <source>Too hard: pain rose by (0: does not count)</source>
        <translation>Demasiado duro: el dolor subió (0: no cuenta)</translation>
    </message>
    <message>
        <source>Too hard: less done than, in % (0: does not count)</source>
        <translation>Demasiado duro: hecho menos de, en % (0: no cuenta)</translation>
    </message>
    <message>
        <source>Next step: %1, %2</source>
        <translation>Paso siguiente: %1, %2</translation>
    </message>
    <message>
        <source>Step back: %1, %2</source>
        <translation>Paso atrás: %1, %2</translation>
    </message>
</context>
<context>
    <name>newel::desk::OwnAccountModel</name>
    <message>
        <source>Type your password.</source>
        <translation>Escriba su contraseña.</translation>
    </message>
    <message>
        <source>Making a second factor</source>
        <translation>Creando un segundo factor</translation>
    </message>
    <message>
        <source>That is not your password.</source>
        <translation>Esa no es su contraseña.</translation>
    </message>
    <message>
        <source>make a second factor</source>
        <translation>crear un segundo factor</translation>
    </message>
    <message>
        <source>Checking the code</source>
        <translation>Comprobando el código</translation>
    </message>
    <message>
        <source>This code is wrong or too late. Type the one that the app shows now. If it is wrong again, set the clock of that device by the network and try once more.</source>
        <translation>Este código es erróneo o llega tarde. Escriba el que muestra ahora la aplicación. Si vuelve a fallar, ponga en hora ese dispositivo por la red e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>check the code</source>
        <translation>comprobar el código</translation>
    </message>
    <message>
        <source>Type the old password once and the new one twice.</source>
        <translation>Escriba la contraseña anterior una vez y la nueva dos veces.</translation>
    </message>
    <message>
        <source>The new password was typed in two ways. Type it twice again.</source>
        <translation>La contraseña nueva se escribió de dos maneras. Escríbala dos veces otra vez.</translation>
    </message>
    <message>
        <source>Changing the password</source>
        <translation>Cambiando la contraseña</translation>
    </message>
    <message>
        <source>The old password is wrong.</source>
        <translation>La contraseña anterior es errónea.</translation>
    </message>
    <message>
        <source>change the password</source>
        <translation>cambiar la contraseña</translation>
    </message>
</context>
<context>
    <name>newel::desk::OwnExerciseModel</name>
    <message>
        <source>revision %1, by %2</source>
        <translation>revisión %1, por %2</translation>
    </message>
    <message>
        <source>A new exercise</source>
        <translation>Un ejercicio nuevo</translation>
    </message>
    <message>
        <source>Revision %1 of %2</source>
        <translation>Revisión %1 de %2</translation>
    </message>
    <message>
        <source>working leg</source>
        <translation>pierna que trabaja</translation>
    </message>
    <message>
        <source>Saving the exercise</source>
        <translation>Guardando el ejercicio</translation>
    </message>
    <message>
        <source>save the exercise</source>
        <translation>guardar el ejercicio</translation>
    </message>
</context>
<context>
    <name>newel::desk::PairingModel</name>
    <message>
        <source>This code is no longer good. Make a new one.</source>
        <translation>Este código ya no vale. Cree uno nuevo.</translation>
    </message>
    <message>
        <source>Good for %1:%2 more</source>
        <translation>Vale %1:%2 más</translation>
    </message>
    <message>
        <source>a phone</source>
        <translation>un teléfono</translation>
    </message>
    <message>
        <source>Making a pairing code</source>
        <translation>Creando un código de vinculación</translation>
    </message>
    <message>
        <source>make a pairing code</source>
        <translation>crear un código de vinculación</translation>
    </message>
</context>
<context>
    <name>newel::desk::PersonFormModel</name>
    <message>
        <source>New person</source>
        <translation>Persona nueva</translation>
    </message>
    <message>
        <source>Record of %1</source>
        <translation>Ficha de %1</translation>
    </message>
    <message>
        <source>Choose one.</source>
        <translation>Elija uno.</translation>
    </message>
    <message>
        <source>Type a name.</source>
        <translation>Escriba un nombre.</translation>
    </message>
    <message>
        <source>Type the height in cm.</source>
        <translation>Escriba la estatura en cm.</translation>
    </message>
    <message>
        <source>One field needs you.</source>
        <translation>Un campo le necesita.</translation>
    </message>
    <message>
        <source>%1 fields need you.</source>
        <translation>%1 campos le necesitan.</translation>
    </message>
    <message>
        <source>Saving the record</source>
        <translation>Guardando la ficha</translation>
    </message>
    <message>
        <source>save this record</source>
        <translation>guardar esta ficha</translation>
    </message>
    <message>
        <source>Ask about each one. If none is so, press Asked: none of these.</source>
        <translation>Pregunte por cada una. Si no hay ninguna, pulse Preguntado: ninguno de estos.</translation>
    </message>
</context>
<context>
    <name>newel::desk::PersonModel</name>
    <message>
        <source>Reading the record</source>
        <translation>Leyendo la ficha</translation>
    </message>
    <message>
        <source>read this record</source>
        <translation>leer esta ficha</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>seen %1</source>
        <translation>visto %1</translation>
    </message>
    <message>
        <source>arrived %1, not seen yet</source>
        <translation>llegado %1, aún sin ver</translation>
    </message>
    <message>
        <source>sent, not arrived yet</source>
        <translation>enviado, aún no llegado</translation>
    </message>
    <message>
        <source>No phone paired</source>
        <translation>Ningún teléfono vinculado</translation>
    </message>
    <message>
        <source>Paired, never heard from</source>
        <translation>Vinculado, nunca hubo contacto</translation>
    </message>
    <message>
        <source>Phone heard from %1 (%2)</source>
        <translation>Contacto con el teléfono %1 (%2)</translation>
    </message>
    <message>
        <source>count what was done</source>
        <translation>contar lo hecho</translation>
    </message>
    <message>
        <source>Nothing due yet that anybody has data for, in %1 weeks</source>
        <translation>Aún nada previsto de lo que haya datos, en %1 semanas</translation>
    </message>
    <message>
        <source>%1 of %2 due done in %3 weeks, %4</source>
        <translation>%1 de %2 previstas hechas en %3 semanas, %4</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>sin datos</translation>
    </message>
    <message>
        <source>Done of due, week by week, oldest first: %1</source>
        <translation>Hechas de previstas, semana a semana, la más antigua primero: %1</translation>
    </message>
    <message>
        <source>%1 opened this record %2: &quot;%3&quot;</source>
        <translation>%1 abrió esta ficha %2: &quot;%3&quot;</translation>
    </message>
    <message>
        <source>An account that is gone</source>
        <translation>Una cuenta que ya no está</translation>
    </message>
    <message>
        <source>Sending the message</source>
        <translation>Enviando el mensaje</translation>
    </message>
    <message>
        <source>send the message</source>
        <translation>enviar el mensaje</translation>
    </message>
    <message>
        <source>With a photo: %1</source>
        <translation>Con una foto: %1</translation>
    </message>
    <message>
        <source>With a clip: %1</source>
        <translation>Con un vídeo: %1</translation>
    </message>
</context>
<context>
    <name>newel::desk::PreviewModel</name>
    <message>
        <source>in English: the words are not there yet in the person&apos;s language</source>
        <translation>en inglés: las palabras aún no están en el idioma de la persona</translation>
    </message>
    <message>
        <source>in the person&apos;s language (%1)</source>
        <translation>en el idioma de la persona (%1)</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>Size of text: their phone has not said it yet.</source>
        <translation>Tamaño del texto: su teléfono aún no lo ha dicho.</translation>
    </message>
    <message>
        <source>Size of text as on their phone: %1 %</source>
        <translation>Tamaño del texto como en su teléfono: %1 %</translation>
    </message>
    <message>
        <source>Size of text: another one than on their phone (%1 %)</source>
        <translation>Tamaño del texto: distinto del de su teléfono (%1 %)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
</context>
<context>
    <name>newel::desk::ProgressModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>In the draft: %1.</source>
        <translation>En el borrador: %1.</translation>
    </message>
    <message>
        <source>In the draft, a step back: %1.</source>
        <translation>En el borrador, un paso atrás: %1.</translation>
    </message>
    <message>
        <source>This exercise has no ladder. The draft leaves its dose to you.</source>
        <translation>Este ejercicio no tiene escalera. El borrador le deja la dosis a usted.</translation>
    </message>
    <message>
        <source>Its dose is your own, off the ladder. The draft leaves it to you.</source>
        <translation>La dosis es suya, fuera de la escalera. El borrador se la deja a usted.</translation>
    </message>
    <message>
        <source>It stands on the last step of its ladder. The draft leaves it to you.</source>
        <translation>Está en el último paso de su escalera. El borrador se lo deja a usted.</translation>
    </message>
    <message>
        <source>It stands on the first step of its ladder. The draft leaves it to you.</source>
        <translation>Está en el primer paso de su escalera. El borrador se lo deja a usted.</translation>
    </message>
    <message>
        <source>The next step is refused for this person: %1</source>
        <translation>El paso siguiente se rechaza para esta persona: %1</translation>
    </message>
    <message>
        <source>that may be chance</source>
        <translation>puede ser casualidad</translation>
    </message>
    <message>
        <source>that matters by both measures: 2 points, 30 %</source>
        <translation>importa según las dos medidas: 2 puntos, 30 %</translation>
    </message>
    <message>
        <source>that matters by the measure of 2 points</source>
        <translation>importa según la medida de 2 puntos</translation>
    </message>
    <message>
        <source>that matters by the measure of 30 %</source>
        <translation>importa según la medida del 30 %</translation>
    </message>
    <message>
        <source>Pain was not rated.</source>
        <translation>No se valoró el dolor.</translation>
    </message>
    <message>
        <source>Pain afterwards: 1 rating</source>
        <translation>Dolor después: 1 valoración</translation>
    </message>
    <message>
        <source>Pain afterwards: %1 ratings</source>
        <translation>Dolor después: %1 valoraciones</translation>
    </message>
    <message>
        <source>, %1 points a week</source>
        <translation>, %1 puntos por semana</translation>
    </message>
    <message>
        <source>; the last three against the three before: %1 points, %2</source>
        <translation>; los tres últimos frente a los tres anteriores: %1 puntos, %2</translation>
    </message>
    <message>
        <source>judge what was done</source>
        <translation>juzgar lo que se hizo</translation>
    </message>
    <message>
        <source>There is no programme yet, so there is nothing to judge.</source>
        <translation>Todavía no hay programa, así que no hay nada que juzgar.</translation>
    </message>
    <message>
        <source>By the rules of programme %1, from practices that the phone told of until %2.</source>
        <translation>Según las reglas del programa %1, con las prácticas que el teléfono contó hasta %2.</translation>
    </message>
    <message>
        <source>By the rules of programme %1. No phone has told of a practice yet.</source>
        <translation>Según las reglas del programa %1. Ningún teléfono ha contado aún una práctica.</translation>
    </message>
    <message>
        <source>Write the next programme</source>
        <translation>Escribir el programa siguiente</translation>
    </message>
    <message>
        <source>Make the draft: 1 exercise on the next step</source>
        <translation>Hacer el borrador: 1 ejercicio en el paso siguiente</translation>
    </message>
    <message>
        <source>Make the draft: %1 exercises on the next step</source>
        <translation>Hacer el borrador: %1 ejercicios en el paso siguiente</translation>
    </message>
</context>
<context>
    <name>newel::desk::RemarksModel</name>
    <message>
        <source>You, %1</source>
        <translation>Usted, %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Keeping the note</source>
        <translation>Guardando la nota</translation>
    </message>
    <message>
        <source>keep the note</source>
        <translation>guardar la nota</translation>
    </message>
    <message>
        <source>Asked for: %1. %2</source>
        <translation>Se pidió: %1. %2</translation>
    </message>
</context>
<context>
    <name>newel::desk::SignInModel</name>
    <message>
        <source>Type the hub&apos;s address, for example hub.clinic.example:7443.</source>
        <translation>Escriba la dirección del hub, por ejemplo hub.clinica.example:7443.</translation>
    </message>
    <message>
        <source>This is not a hub&apos;s fingerprint: 64 letters and digits. Whoever runs the hub can read it there.</source>
        <translation>Esto no es la huella de un hub: 64 letras y cifras. Quien lleva el hub puede leerla allí.</translation>
    </message>
    <message>
        <source>Type your name and your password.</source>
        <translation>Escriba su nombre y su contraseña.</translation>
    </message>
    <message>
        <source>Signing in</source>
        <translation>Entrando</translation>
    </message>
    <message>
        <source>sign in</source>
        <translation>entrar</translation>
    </message>
    <message>
        <source>The hub at this address shows another fingerprint. Do not sign in until whoever runs the hub has told you why.</source>
        <translation>El hub de esta dirección muestra otra huella. No entre hasta que quien lleva el hub le diga por qué.</translation>
    </message>
    <message>
        <source>No hub answers at this address. Check the address and the network, then try again.</source>
        <translation>Ningún hub responde en esta dirección. Compruebe la dirección y la red e inténtelo de nuevo.</translation>
    </message>
</context>
<context>
    <name>newel::desk::SignInTry</name>
    <message>
        <source>Too many tries. Wait %1 seconds, then try again.</source>
        <translation>Demasiados intentos. Espere %1 segundos e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Type your password.</source>
        <translation>Escriba su contraseña.</translation>
    </message>
    <message>
        <source>Type the six digits that your code app shows now.</source>
        <translation>Escriba las seis cifras que muestra ahora su aplicación de códigos.</translation>
    </message>
    <message>
        <source>This code is wrong, too late, or was used already. Wait for the next one and type that. If it is wrong again, the clock of the device with the code app may be off.</source>
        <translation>Este código es erróneo, llega tarde o ya se usó. Espere al siguiente y escríbalo. Si vuelve a fallar, puede que el dispositivo de los códigos no esté en hora.</translation>
    </message>
    <message>
        <source>Name or password is wrong. Type both again.</source>
        <translation>El nombre o la contraseña es erróneo. Escriba ambos otra vez.</translation>
    </message>
    <message>
        <source>This account is switched off. A lead or an administrator of the clinic can switch it on again.</source>
        <translation>Esta cuenta está desactivada. Un responsable o un administrador de la clínica puede activarla otra vez.</translation>
    </message>
    <message>
        <source>This first password is too old. Ask a lead or an administrator for a new one.</source>
        <translation>Esta primera contraseña está caducada. Pida una nueva a un responsable o un administrador.</translation>
    </message>
</context>
<context>
    <name>newel::desk::StartModel</name>
    <message>
        <source>%1 min on the fullest day, 1 week</source>
        <translation>%1 min en el día más lleno, 1 semana</translation>
    </message>
    <message>
        <source>%1 min on the fullest day, %2 weeks</source>
        <translation>%1 min en el día más lleno, %2 semanas</translation>
    </message>
    <message>
        <source>Not for this person: %1</source>
        <translation>No para esta persona: %1</translation>
    </message>
    <message>
        <source>Written by %1, %2</source>
        <translation>Escrita por %1, %2</translation>
    </message>
    <message>
        <source>Programme %1, the last one</source>
        <translation>Programa %1, el último</translation>
    </message>
    <message>
        <source>It cannot be done with this person&apos;s limbs or prosthesis.</source>
        <translation>No se puede hacer con las piernas o la prótesis de esta persona.</translation>
    </message>
    <message>
        <source>The catalogue does not have it like this any more.</source>
        <translation>El catálogo ya no lo tiene así.</translation>
    </message>
    <message>
        <source>Begun from &quot;%1&quot;.</source>
        <translation>Empezado desde &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>Begun from &quot;%1&quot;: %2 of %3 exercises taken.</source>
        <translation>Empezado desde &quot;%1&quot;: se toman %2 de %3 ejercicios.</translation>
    </message>
    <message>
        <source>The template needs a name.</source>
        <translation>La plantilla necesita un nombre.</translation>
    </message>
    <message>
        <source>Kept for the clinic: %1.</source>
        <translation>Guardada para la clínica: %1.</translation>
    </message>
    <message>
        <source>Renamed: %1.</source>
        <translation>Nombre cambiado: %1.</translation>
    </message>
    <message>
        <source>Keeping the template</source>
        <translation>Guardando la plantilla</translation>
    </message>
    <message>
        <source>keep the template</source>
        <translation>guardar la plantilla</translation>
    </message>
    <message>
        <source>Withdrawing the template</source>
        <translation>Retirando la plantilla</translation>
    </message>
    <message>
        <source>withdraw the template</source>
        <translation>retirar la plantilla</translation>
    </message>
    <message>
        <source>Withdrawn: %1.</source>
        <translation>Retirada: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 name an exercise of the catalogue, with what the file says of dose and days.</source>
        <translation>%1 de %2 nombran un ejercicio del catálogo, con lo que el archivo dice de dosis y días.</translation>
    </message>
    <message>
        <source>Begun from the file: %1 of %2 requests taken.</source>
        <translation>Empezado desde el archivo: %1 de %2 peticiones tomadas.</translation>
    </message>
    <message>
        <source>asks for measures</source>
        <translation>pide medidas</translation>
    </message>
    <message>
        <source>with wearing time</source>
        <translation>con tiempo de uso</translation>
    </message>
    <message>
        <source>Its wearing time was not taken: this person has their own, or no prosthesis.</source>
        <translation>Su tiempo de uso no se tomó: esta persona tiene el suyo, o no lleva prótesis.</translation>
    </message>
</context>
<context>
    <name>newel::desk::TimelineModel</name>
    <message>
        <source>Programmes</source>
        <translation>Programas</translation>
    </message>
    <message>
        <source>Hold orders</source>
        <translation>Órdenes de suspensión</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Mensajes</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Programme %1, %2 to %3, signed by %4</source>
        <translation>Programa %1, %2 a %3, firmado por %4</translation>
    </message>
    <message>
        <source>Hold on %1, by %2</source>
        <translation>Suspensión de %1, por %2</translation>
    </message>
    <message>
        <source>Hold lifted by %1</source>
        <translation>Suspensión levantada por %1</translation>
    </message>
    <message>
        <source>Urgent message from %1</source>
        <translation>Mensaje urgente de %1</translation>
    </message>
    <message>
        <source>Message from %1</source>
        <translation>Mensaje de %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>newel::desk::WearDraftModel</name>
    <message>
        <source>all day</source>
        <translation>todo el día</translation>
    </message>
    <message>
        <source>%1 min a day</source>
        <translation>%1 min al día</translation>
    </message>
    <message>
        <source>No wear plan: the phone sets no limit and asks nothing.</source>
        <translation>Sin plan de uso: el teléfono no pone límite ni pregunta nada.</translation>
    </message>
    <message>
        <source>A first wear plan.</source>
        <translation>Un primer plan de uso.</translation>
    </message>
    <message>
        <source>Goes on as it is, plan %1. What the skin stopped stays stopped.</source>
        <translation>Sigue como está, plan %1. Lo que paró la piel sigue parado.</translation>
    </message>
    <message>
        <source>Changed: plan %1 begins on %2. What stopped the plan before no longer counts.</source>
        <translation>Cambiado: el plan %1 empieza el %2. Lo que paró el plan antes ya no cuenta.</translation>
    </message>
    <message>
        <source>over %1 to %2 min</source>
        <translation>más de %1 a %2 min</translation>
    </message>
    <message>
        <source>over %1 min</source>
        <translation>más de %1 min</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
</context>
</TS>
